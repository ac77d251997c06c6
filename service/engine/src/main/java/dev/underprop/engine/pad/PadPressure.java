package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;

/**
 * Contact pressure of a pad, its own weight included, against the allowable bearing pressure of the ground. Where that is worked
 * out from the strength of the ground, the sideways push of the post takes from it.
 */
public final class PadPressure {

    private PadPressure() {}

    /** @param load on the pad from the post */
    public static Finding judge(Post post, Ground ground, PadLoad load, Working working) {
        if (!(post.footing() instanceof Pad pad)) {
            return new CheckResult.NotChecked("no pad is named under this post (declare: pad)");
        }
        if (!(pad.weight() instanceof Pad.Known weight)) {
            return new CheckResult.NotChecked(
                    "the unit weight of pad " + pad.name() + " is not given (declare: unitWeight)");
        }
        GroundPressure.tell(pad, weight, load.greatest(), working);
        double total = load.greatest() + pad.weightOf(weight);
        double pressure = working.step(
                "q",
                "pressure, the pad's weight included",
                Dimension.STRESS,
                total / pad.area(),
                "( " + GroundPressure.total(pad) + " ) / A");
        double tilt = GroundPressure.tilt(load, total, "( " + GroundPressure.total(pad) + " )", working);
        return GroundPressure.judge(ground, Tread.whole(pad, pressure, tilt), "q", working);
    }

    /** Where the allowable pressure stands. */
    public static Citation citation(Ground ground) {
        return GroundPressure.citation(ground);
    }
}
