package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.clause.aisc360_16.SectionF11;
import dev.underprop.engine.clause.aisc_dg1_2006.Section3_1;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.engine.standard.Citation;

/**
 * Head and base plate of a post in bending under an even pressure: the head plate where the beam lies on it, the base plate
 * all over. Each is looked at along and across as a cantilever, and the worst of the four counts. Stress is the moment over
 * the plastic modulus, against Fy/1.67.
 */
final class PlateJudge {

    static final Citation RULE = Citation.remembered(
            "AISC", "360-16", "F11; even pressure and bending lines of AISC Design Guide 1, 2nd edition, 3.1");

    /** Plates that miss by less than this fit (m). */
    private static final double FIT = 1e-4;

    private PlateJudge() {}

    /** @param load greatest load of the post (N), not negative */
    static Finding judge(Shore shore, Post post, double load) {
        if (!(post.type() instanceof PostType type)) {
            return new CheckResult.NotChecked("no post type is named, so its plates are not known (declare: type)");
        }
        boolean noHead = bears(type, type.head());
        boolean noBase = bears(type, type.base());
        if (noHead && noBase) {
            return new CheckResult.NotApplicable("the timber bears on its end grain; no plate reaches beyond it");
        }
        Finding base = noBase ? head(shore, post, type.head(), load) : base(post, type.base(), load);
        return noHead ? base : Worse.of(head(shore, post, type.head(), load), base);
    }

    /** Whether a post of timber fills the plate, so that nothing bends it. */
    private static boolean bears(PostType type, Plate plate) {
        return type.shaft() instanceof TimberPost timber && TimberPostJudge.covers(timber, plate);
    }

    private static Finding head(Shore shore, Post post, Plate plate, double load) {
        double reach = Math.min(post.x() - shore.start(), shore.end() - post.x());
        if (reach < plate.along() / 2 - FIT) {
            return new CheckResult.NotChecked(
                    "the head plate lies partly or wholly beyond the beam's end, so that the pressure on it is not even");
        }
        double breadth = shore.beam().breadth();
        if (plate.across() < breadth - FIT) {
            return new CheckResult.NotChecked(
                    "the head plate is narrower than the beam, so that what presses on it is not known");
        }
        return judge(plate, "head plate", plate.along(), Math.min(breadth, plate.across()), load);
    }

    private static Finding base(Post post, Plate plate, double load) {
        if (!(post.footing() instanceof Pad pad)) {
            return new CheckResult.NotChecked(
                    "no pad is named, so what presses on the base plate is not known (declare: pad)");
        }
        return pad.along() < plate.along() - FIT || pad.across() < plate.across() - FIT
                ? new CheckResult.NotChecked(
                        "the base plate reaches beyond its pad, so that the pressure on it is not even")
                : judge(plate, "base plate", plate.along(), plate.across(), load);
    }

    private static Finding judge(Plate plate, String what, double along, double across, double load) {
        if (Double.isNaN(plate.thickness())) {
            return new CheckResult.NotChecked("the thickness of the " + what + " is not stated (declare: thickness)");
        }
        if (Double.isNaN(plate.yield())) {
            return new CheckResult.NotChecked(
                    "the yield stress of the " + what + " is not stated (declare: yieldStress)");
        }
        if (plate.shank() instanceof PostType.NoShank) {
            return new CheckResult.NotChecked(
                    "what of the post meets the " + what + ", and how wide it is, is not stated");
        }
        double out = Math.max(out(plate.shank(), along), out(plate.shank(), across));
        double modulus = plate.thickness() * plate.thickness() / 4;
        double moment = load / (along * across) * out * out / 2;
        double allowed = SectionF11.plate(plate.yield(), plate.thickness()).value();
        return new CheckResult.Judged(Measure.STRESS, moment / modulus, allowed / modulus);
    }

    private static double out(PostType.Shank shank, double pressed) {
        return shank instanceof PostType.Square square
                ? Section3_1.besideSquare(pressed, square.side()).value()
                : Section3_1.besideRound(pressed, ((PostType.Round) shank).diameter())
                        .value();
    }
}
