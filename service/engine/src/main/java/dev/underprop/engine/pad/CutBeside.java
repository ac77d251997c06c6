package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.plan.Excavation;
import dev.underprop.engine.plan.Excavation.Cut;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.standard.Citation;
import java.util.Locale;

/**
 * A cut beside a pad. A line from the cut's bottom edge up to the pad's nearest edge must not be steeper than 30 degrees:
 * the rule for footings at different levels on granular ground. It is flatter than the 1.5 to 1 at which 29 CFR 1926 Subpart P
 * lets the weakest ground stand without support (from memory). A pad is centred on its post within the centring of the plan,
 * and as much nearer to the cut; where no centring is stated it may fail but not pass. A smaller pressure for a pad that is nearer is
 * not worked out. Where the ground bears by its strength, the pad must also stand so far off that the cut takes nothing from the
 * ground that is pushed up beside a pad that gives way; nearer it does not pass.
 */
public final class CutBeside {

    /** Horizontal over vertical, the cotangent of 30 degrees. */
    static final double SLOPE = Math.sqrt(3);

    private static final Citation RULE =
            Citation.remembered("IBC", "2021", "1809.6, footings on granular soil, 30 degrees");

    private CutBeside() {}

    /**
     * Judges one post.
     *
     * @param excavation what the plan says of cuts
     * @param post the post, with its pad
     * @param y of its shore (m)
     * @param ground under the pad
     */
    public static Finding judge(Excavation excavation, Post post, double y, Ground ground) {
        if (excavation instanceof Excavation.None) {
            return new CheckResult.Condition(
                    true, Measure.DEFLECTION, 0, "the plan states that the ground is not cut near the pads");
        }
        if (!(excavation instanceof Excavation.Cuts cuts)) {
            return new CheckResult.NotChecked(
                    "whether the ground is cut near the pads is not stated (declare: excavation)");
        }
        if (!(post.footing() instanceof Pad pad)) {
            return new CheckResult.NotChecked("no pad is named under this post (declare: pad)");
        }
        for (Cut cut : cuts.cuts()) {
            double clear = distance(cut, post.x(), y, pad) - pad.statedOffset();
            if (clear < SLOPE * cut.depth() - 1e-9) {
                return new CheckResult.Condition(false, Measure.DEFLECTION, 0, tooNear(cut, clear));
            }
        }
        if (!(pad.centring() instanceof Pad.Within)) {
            return PadStrength.uncentred(pad);
        }
        if (ground.top() instanceof Ground.Strength strength) {
            double reach = GroundStrength.reach(strength, Math.min(pad.along(), pad.across()));
            for (Cut cut : cuts.cuts()) {
                if (distance(cut, post.x(), y, pad) - pad.statedOffset() < reach) {
                    return new CheckResult.NotChecked(unreduced(cut, reach));
                }
            }
        }
        return new CheckResult.Condition(
                true,
                Measure.DEFLECTION,
                0,
                "its pad stays clear of a line at 30 degrees from the bottom of every cut");
    }

    private static String unreduced(Cut cut, double reach) {
        return "what the ground bears is worked out with the ground beside the pad there as far as " + length(reach)
                + ", and the cut " + cut.name() + " is nearer; what it bears beside a cut is not worked out";
    }

    private static String tooNear(Cut cut, double clear) {
        return clear <= 0
                ? "its pad reaches the cut " + cut.name()
                : "its pad is " + length(clear) + " from the cut " + cut.name() + ", which is " + length(cut.depth())
                        + " deep below the pads: at 30 degrees it should be " + length(SLOPE * cut.depth());
    }

    private static String length(double metres) {
        return String.format(Locale.ROOT, "%.2f m (%.1f ft)", metres, metres / 0.3048);
    }

    /** Clear distance (m) in plan between a pad and a cut, 0 where they touch or overlap. */
    private static double distance(Cut cut, double x, double y, Pad pad) {
        double along = gap(x, pad.along(), cut.fromX(), cut.toX());
        double across = gap(y, pad.across(), cut.fromY(), cut.toY());
        return Math.sqrt(along * along + across * across);
    }

    private static double gap(double centre, double size, double from, double to) {
        return Math.max(0, Math.max(from - (centre + size / 2), centre - size / 2 - to));
    }

    /** The rule. */
    public static Citation citation() {
        return RULE;
    }
}
