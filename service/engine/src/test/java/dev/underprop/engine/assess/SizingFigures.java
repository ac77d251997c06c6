package dev.underprop.engine.assess;

import dev.underprop.engine.clause.nds2018.Section15_3;
import dev.underprop.engine.clause.nds2018.Section15_3.By;
import dev.underprop.engine.clause.nds2018.Section15_3.Pattern;
import dev.underprop.engine.clause.nds2018.Section3_7;
import dev.underprop.engine.clause.nds2018.Section4_4;
import dev.underprop.engine.clause.nds2018.Section4_4.LateralSupport;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.standard.Outcome;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Inputs;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;

/** Problems put the other way round: how long, how far apart, how deep at most. */
final class SizingFigures {

    private static final double INCH = Plans.INCH;

    private SizingFigures() {}

    /** The longest square column of one side, and the load of others at one length. */
    static double column(Case published, Expected wanted) {
        Inputs in = published.inputs();
        boolean row = wanted.given().has("side_in") || wanted.given().has("side_mm");
        double side = InUnits.length(row ? wanted.given() : in, "side");
        double star = InUnits.stress(in, "star");
        double slenderness = row
                ? FactorFigures.value(Section3_7.slenderness(InUnits.length(in, "length"), side, false))
                : longest(in, side, star);
        double factor = factor(in, star, slenderness);
        return switch (wanted.name()) {
            case "slenderness", "slendernessMax" -> slenderness;
            case "lengthMax" -> slenderness * side;
            case "CP" -> factor;
            case "load" -> factor * star * side * side;
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    private static double longest(Inputs in, double side, double star) {
        double wanted = InUnits.force(in, "load") / (star * side * side);
        double low = 1;
        double high = 50;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean carries = factor(in, star, middle) > wanted;
            low = carries ? middle : low;
            high = carries ? high : middle;
        }
        return low;
    }

    /** FcE of 3.7.1.5 is 0.822 E'min over the square of the slenderness; the source states 0.3 E instead. */
    private static double factor(Inputs in, double star, double slenderness) {
        double modulus = InUnits.stress(in, "buckling") / 0.822;
        return Section3_7.stability(
                        Section3_7.criticalStress(modulus, slenderness).value(), star)
                .value();
    }

    /** Bounds of the nailing of a built-up column of three boards, in steps of a quarter, by what is refused and what not. */
    static double builtUp(Case published, Expected wanted) {
        double d = published.inputs().number("diameter_in") * INCH;
        double t = 1.5 * INCH;
        return switch (wanted.name()) {
            case "Kf" -> FactorFigures.value(wanted.given().text("by").equals("nails") ? nailed(d) : bolted());
            case "endDistanceMin" -> least(x -> nails(d, x * d, 24 * d, 2, 15 * d, 10 * d));
            case "endDistanceMax" -> most(x -> nails(d, x * d, 24 * d, 2, 15 * d, 10 * d));
            case "spacingMin" -> least(x -> nails(d, 16 * d, x * d, 2, 15 * d, 10 * d));
            case "spacingMax" -> most(x -> nails(d, 16 * d, x * t, 2, 15 * d, 10 * d));
            case "rowSpacingMin" -> least(x -> nails(d, 16 * d, 24 * d, 2, x * d, 10 * d));
            case "rowSpacingMax" -> most(x -> nails(d, 16 * d, 24 * d, 2, x * d, 10 * d));
            case "edgeDistanceMin" -> least(x -> nails(d, 16 * d, 24 * d, 2, 15 * d, x * d));
            case "edgeDistanceMax" -> most(x -> nails(d, 16 * d, 24 * d, 2, 15 * d, x * d));
            case "pliesMin" -> least(x -> boards((int) Math.floor(x), t, d));
            case "pliesMax" -> Math.floor(most(x -> boards((int) Math.floor(x), t, d)));
            case "thicknessMin" -> INCH * least(x -> boards(3, x * INCH, d));
            case "nailLengthMin" -> INCH / 8 * least(x -> long1(x * INCH / 8, d));
            default -> throw new IllegalArgumentException(wanted.name());
        };
    }

    private static Outcome nailed(double d) {
        return nails(d, 16 * d, 24 * d, 2, 15 * d, 10 * d);
    }

    private static Outcome nails(double d, double end, double spacing, int rows, double between, double edge) {
        Pattern pattern = new Pattern(By.NAILS, d, 1, end, spacing, rows, between, edge, true);
        return Section15_3.factor(3, 1.5 * INCH, 5.5 * INCH, pattern);
    }

    private static Outcome boards(int plies, double thickness, double d) {
        Pattern pattern = new Pattern(By.NAILS, d, 1, 16 * d, 24 * d, 2, 15 * d, 10 * d, true);
        return Section15_3.factor(plies, thickness, 5.5 * INCH, pattern);
    }

    private static Outcome long1(double length, double d) {
        Pattern pattern = new Pattern(By.NAILS, d, length, 16 * d, 24 * d, 2, 15 * d, 10 * d, true);
        return Section15_3.factor(3, 1.5 * INCH, 5.5 * INCH, pattern);
    }

    private static Outcome bolted() {
        double d = 0.5 * INCH;
        Pattern pattern = new Pattern(By.BOLTS, d, Double.NaN, 8 * d, 6 * d, 2, 5 * d, 3 * d, true);
        return Section15_3.factor(3, 1.5 * INCH, 5.5 * INCH, pattern);
    }

    private static double least(DoubleFunction<Outcome> rule) {
        return allowed(rule).min().orElseThrow();
    }

    private static double most(DoubleFunction<Outcome> rule) {
        return allowed(rule).max().orElseThrow();
    }

    private static DoubleStream allowed(DoubleFunction<Outcome> rule) {
        return DoubleStream.iterate(0.25, x -> x < 60, x -> x + 0.25)
                .filter(x -> rule.apply(x) instanceof Outcome.Value);
    }

    /** The ratio, if bridging is what the rule wants at it and nothing less is enough. */
    static double needsBridging(Expected wanted) {
        double ratio = Double.parseDouble(wanted.given().text("depthOverBreadth"));
        boolean enough = Section4_4.stabilityByRule(1, ratio, LateralSupport.BRIDGING) instanceof Outcome.Value;
        boolean less = Section4_4.stabilityByRule(1, ratio, LateralSupport.COMPRESSION_EDGE) instanceof Outcome.Value;
        return enough && !less ? ratio : Double.NaN;
    }

    static double distortion(Case published, Expected wanted) {
        return Limits.DEFAULT.transfer().slope();
    }
}
