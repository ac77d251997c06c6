package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.aisc360_16.SectionF11;
import dev.underprop.engine.clause.aisc_dg1_2006.Section3_1;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;

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

    /** As {@link #judge(Shore, Post, double, Working)}, without a record. */
    static Finding judge(Shore shore, Post post, double load) {
        return judge(shore, post, load, Working.OFF);
    }

    /** @param load greatest load of the post (N), not negative */
    static Finding judge(Shore shore, Post post, double load, Working working) {
        if (!(post.type() instanceof PostType type)) {
            return new CheckResult.NotChecked("no post type is named, so its plates are not known (declare: type)");
        }
        boolean noHead = bears(type, type.head());
        boolean noBase = bears(type, type.base());
        if (noHead && noBase) {
            return new CheckResult.NotApplicable("the timber bears on its end grain; no plate reaches beyond it");
        }
        Working above = working.branch();
        Working below = working.branch();
        Finding base = noBase ? head(shore, post, type.head(), load, below) : base(post, type.base(), load, below);
        Finding worst = noHead ? base : Worse.of(head(shore, post, type.head(), load, above), base);
        working.adopt(worst == base ? below : above);
        return worst;
    }

    /** Whether a post of timber fills the plate, so that nothing bends it. */
    private static boolean bears(PostType type, Plate plate) {
        return type.shaft() instanceof TimberPost timber && TimberPostJudge.covers(timber, plate);
    }

    private static Finding head(Shore shore, Post post, Plate plate, double load, Working working) {
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
        return judge(plate, "head plate", new Pressed(plate.along(), Math.min(breadth, plate.across()), load), working);
    }

    private static Finding base(Post post, Plate plate, double load, Working working) {
        if (!(post.footing() instanceof Pad pad)) {
            return new CheckResult.NotChecked(
                    "no pad is named, so what presses on the base plate is not known (declare: pad)");
        }
        return pad.along() < plate.along() - FIT || pad.across() < plate.across() - FIT
                ? new CheckResult.NotChecked(
                        "the base plate reaches beyond its pad, so that the pressure on it is not even")
                : judge(plate, "base plate", new Pressed(plate.along(), plate.across(), load), working);
    }

    /**
     * What presses evenly on a plate.
     *
     * @param along size along the beam (m), positive
     * @param across size across it (m), positive
     * @param load (N), not negative
     */
    private record Pressed(double along, double across, double load) {}

    private static Finding judge(Plate plate, String what, Pressed pressed, Working working) {
        if (Double.isNaN(plate.thickness())) {
            return new CheckResult.NotChecked("the thickness of the " + what + " is not stated (declare: thickness)");
        }
        if (Double.isNaN(plate.yield())) {
            return new CheckResult.NotChecked(
                    "the yield stress of the " + what + " is not stated (declare: yieldStress)");
        }
        if (plate.shank() instanceof PostType.NoShank) {
            return new CheckResult.NotChecked(
                    "what of the post meets the " + what + ", and how wide it is, is not stated (declare: round)");
        }
        working.analysis("P", "greatest load of the post", Dimension.FORCE, pressed.load);
        double out = out(plate.shank(), pressed, working);
        double thickness = working.plan("t", "thickness of the " + what, Dimension.LENGTH, plate.thickness());
        double modulus = working.step(
                "Z", "plastic section modulus by width", Dimension.AREA, thickness * thickness / 4, "t^2 / 4");
        double moment = working.step(
                "m",
                "moment by width where it stands out",
                Dimension.FORCE,
                pressed.load / (pressed.along * pressed.across) * out * out / 2,
                "P / ( a × w ) × o^2 / 2");
        working.plan("Fy", "yield stress of the " + what, Dimension.STRESS, plate.yield());
        double allowed = working.rule(
                "ma",
                SectionF11.plate(plate.yield(), thickness),
                "allowable moment by width",
                Dimension.FORCE,
                "min( Fy × t^2 / 4 , 1.6 × Fy × t^2 / 6 ) / 1.67");
        double stress = working.step("f", "stress", Dimension.STRESS, moment / modulus, "m / Z");
        double most = working.step("Fa", "allowable stress", Dimension.STRESS, allowed / modulus, "ma / Z");
        return working.compared("f", "Fa", new CheckResult.Judged(Measure.STRESS, stress, most));
    }

    /** How far the plate stands out, the worse way. */
    private static double out(PostType.Shank shank, Pressed pressed, Working working) {
        boolean square = shank instanceof PostType.Square;
        double size = shank instanceof PostType.Square tube ? tube.side() : ((PostType.Round) shank).diameter();
        working.plan("a", "pressed along the beam", Dimension.LENGTH, pressed.along);
        working.plan("w", "pressed across the beam", Dimension.LENGTH, pressed.across);
        working.plan("s", square ? "side of the square tube" : "diameter of the round post", Dimension.LENGTH, size);
        Cited along = out(square, size, pressed.along);
        Cited across = out(square, size, pressed.across);
        String formula = square ? "max( 0 , ( # - 0.95 × s ) / 2 )" : "max( 0 , ( # - 0.8 × s ) / 2 )";
        working.rule("o1", along, "stands out along the beam", Dimension.LENGTH, formula.replace("#", "a"));
        working.rule("o2", across, "stands out across the beam", Dimension.LENGTH, formula.replace("#", "w"));
        double worse = Math.max(along.value(), across.value());
        return working.step("o", "the larger", Dimension.LENGTH, worse, "max( o1 , o2 )");
    }

    private static Cited out(boolean square, double size, double pressed) {
        return square ? Section3_1.besideSquare(pressed, size) : Section3_1.besideRound(pressed, size);
    }
}
