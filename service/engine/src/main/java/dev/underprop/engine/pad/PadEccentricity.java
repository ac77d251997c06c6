package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;

/**
 * Pressure of a pad's worst corner, with the post off its middle and pushing sideways, against the allowable bearing pressure.
 * The weight of the pad acts in its middle.
 */
public final class PadEccentricity {

    private PadEccentricity() {}

    /** Judges the pad of one post. */
    public static Finding judge(Post post, Ground ground, PadLoad load) {
        if (!(post.footing() instanceof Pad pad)) {
            return new CheckResult.NotChecked("no pad is named under this post (declare: pad)");
        }
        if (!(pad.weight() instanceof Pad.Known weight)) {
            return new CheckResult.NotChecked(
                    "the unit weight of pad " + pad.name() + " is not given (declare: unitWeight)");
        }
        if (!(pad.centring() instanceof Pad.Within centring)) {
            return PadStrength.uncentred(pad);
        }
        double total = load.greatest() + pad.weightOf(weight);
        double mean = total / pad.area();
        Finding even = GroundPressure.judge(ground, pad, mean);
        if (!(even instanceof CheckResult.Judged)) {
            return even;
        }
        double off = load.greatest() > 0
                ? OffCentre.of(pad, centring, post.type(), load.lean()) * load.greatest() / total
                : 0;
        Outcome factor = OffCentre.factor(pad, off);
        return factor instanceof Outcome.Refused refused
                ? new CheckResult.Refused(Measure.PRESSURE, mean, refused.reason())
                : GroundPressure.judge(
                        ground, pad, mean * ((Outcome.Value) factor).cited().value());
    }

    /** The rule. */
    public static Citation citation() {
        return OffCentre.PLANE;
    }
}
