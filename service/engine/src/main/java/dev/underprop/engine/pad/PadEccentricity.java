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
 * The weight of the pad acts in its middle. Where the ground bears by its strength, the part of the pad that has its middle under
 * the load must also bear it all (Meyerhof 1953, from memory): on long pads that is the stricter of the two.
 */
public final class PadEccentricity {

    private PadEccentricity() {}

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
                load.greatest() + pad.weightOf(weight),
                GroundPressure.total(pad));
        double mean = working.step("q", "mean pressure", Dimension.STRESS, total / pad.area(), "Q / A");
        double passes = OffCentre.of(pad, centring, load, working);
        double tilt = GroundPressure.tilt(load, total, "Q", working);
        Working upright = working.branch();
        Finding central = GroundPressure.judge(ground, Tread.whole(pad, mean, tilt), "q", upright);
        if (!(central instanceof CheckResult.Judged)) {
            working.adopt(upright);
            return central;
        }
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
        Tread pressed = Tread.whole(pad, corner, tilt);
        return ground.top() instanceof Ground.Strength
                ? both(ground, pressed, Tread.part(pad, total, off, tilt), working)
                : GroundPressure.judge(ground, pressed, "qmax", working);
    }

    /** The worst corner, and the part that has its middle under the load: ground of known strength has to bear both. */
    private static Finding both(Ground ground, Tread corner, Tread part, Working working) {
        Working one = working.branch();
        Finding pressed = GroundPressure.judge(ground, corner, "qmax", one);
        Working other = working.branch();
        other.step("B'", "part that bears, along the beam", Dimension.LENGTH, part.along(), "B - 2 × eQ");
        other.step("L'", "part that bears, across the beam", Dimension.LENGTH, part.across(), "L - 2 × eQ");
        other.step("q'", "pressure there", Dimension.STRESS, part.pressure(), "Q / ( B' × L' )");
        Finding borne = GroundPressure.judge(ground, part, "q'", other);
        boolean first = !(pressed instanceof CheckResult.Judged);
        boolean second = !(borne instanceof CheckResult.Judged);
        if (first || second) {
            working.adopt(first ? one : other);
            return first ? pressed : borne;
        }
        Finding worst = Worst.of((CheckResult.Judged) pressed, (CheckResult.Judged) borne);
        working.adopt(worst == pressed ? one : other);
        return worst;
    }

    /** The rule. */
    public static Citation citation() {
        return OffCentre.PLANE;
    }
}
