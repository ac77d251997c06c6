package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Outcome;

/**
 * Pressure of a pad's worst corner, with the post off its middle and pushing sideways, against the allowable bearing pressure.
 * The weight of the pad acts in its middle.
 */
public final class PadEccentricity {

    private PadEccentricity() {}

    /** As {@link #judge(Post, Ground, PadLoad, Working)}, without a record. */
    public static Finding judge(Post post, Ground ground, PadLoad load) {
        return judge(post, ground, load, Working.OFF);
    }

    /** Judges the pad of one post. */
    public static Finding judge(Post post, Ground ground, PadLoad load, Working working) {
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
        GroundPressure.tell(pad, weight, load.greatest(), working);
        double total = working.step(
                "Q",
                "load with the pad's weight",
                Dimension.FORCE,
                load.greatest() + weight.unitWeight() * pad.thickness() * pad.area(),
                "P + γ × t × A");
        double mean = working.step("q", "mean pressure", Dimension.STRESS, total / pad.area(), "Q / A");
        if (!(GroundPressure.judge(ground, mean) instanceof CheckResult.Judged)) {
            return GroundPressure.judge(ground, mean, "q", working);
        }
        double passes = OffCentre.of(pad, centring, post.type(), load.lean(), working);
        double off = load.greatest() > 0 ? passes * load.greatest() / total : 0;
        working.step(
                "eQ", "all load off the middle", Dimension.LENGTH, off, load.greatest() > 0 ? "e × P / Q" : "0 × e");
        Outcome factor = OffCentre.factor(pad, off, "eQ", working);
        if (!(factor instanceof Outcome.Value worst)) {
            String reason = ((Outcome.Refused) factor).reason();
            return working.compared("q", "", new CheckResult.Refused(Measure.PRESSURE, mean, reason));
        }
        double corner = working.step(
                "qmax",
                "pressure of the worst corner",
                Dimension.STRESS,
                mean * worst.cited().value(),
                "q × m");
        return GroundPressure.judge(ground, corner, "qmax", working);
    }

    /** The rule. */
    public static Citation citation() {
        return OffCentre.PLANE;
    }
}
