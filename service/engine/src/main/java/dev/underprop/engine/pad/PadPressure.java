package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.standard.Citation;

/** Contact pressure of a pad, its own weight included, against the allowable bearing pressure of the ground. */
public final class PadPressure {

    private PadPressure() {}

    /** @param load on the pad from the post (N) */
    public static Finding judge(Post post, Ground ground, double load) {
        if (!(post.footing() instanceof Pad pad)) {
            return new CheckResult.NotChecked("no pad is named under this post (declare: pad)");
        }
        if (!(pad.weight() instanceof Pad.Known weight)) {
            return new CheckResult.NotChecked(
                    "the unit weight of pad " + pad.name() + " is not given (declare: unitWeight)");
        }
        return GroundPressure.judge(ground, pad, (load + pad.weightOf(weight)) / pad.area());
    }

    /** Where the allowable pressure stands. */
    public static Citation citation(Ground ground) {
        return GroundPressure.citation(ground);
    }
}
