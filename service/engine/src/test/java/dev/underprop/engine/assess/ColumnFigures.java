package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Plans.INCH;
import static dev.underprop.engine.assess.Plans.PSI;

import dev.underprop.engine.clause.nds2018.Section3_10;
import dev.underprop.engine.clause.nds2018.Section3_7;
import dev.underprop.engine.plan.PropClass;
import dev.underprop.engine.standard.Outcome;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Inputs;
import java.util.stream.DoubleStream;

/** Strength of posts. */
final class ColumnFigures {

    /** Of FcE in 3.7.1.5. */
    private static final double NDS = 0.822;

    private ColumnFigures() {}

    static double timber(Case published, Expected wanted) {
        Inputs in = published.inputs();
        double star = stress(in, "star");
        double modulus = in.has("modulusMin_psi") ? stress(in, "modulusMin") : stress(in, "buckling") / NDS;
        double slenderness =
                FactorFigures.value(Section3_7.slenderness(length(in, "length"), length(in, "size"), false));
        double critical = Section3_7.criticalStress(modulus, slenderness).value();
        double factor = Section3_7.stability(critical, star).value();
        return switch (wanted.name()) {
            case "slenderness" -> slenderness;
            case "FcE" -> critical;
            case "CP" -> factor;
            case "Fc" -> factor * star;
            default -> factor * star * area(in);
        };
    }

    private static double stress(Inputs in, String name) {
        return in.has(name + "_psi") ? in.number(name + "_psi") * PSI : in.number(name + "_MPa") * 1e6;
    }

    private static double length(Inputs in, String name) {
        return in.has(name + "_in") ? in.number(name + "_in") * INCH : in.number(name + "_mm") * 1e-3;
    }

    private static double area(Inputs in) {
        return in.has("area_in2")
                ? in.number("area_in2") * INCH * INCH
                : in.numbers("area_mm").stream()
                        .mapToDouble(Double::doubleValue)
                        .reduce(1e-6, (one, other) -> one * other);
    }

    /** The greatest slenderness that is not refused, on half steps. */
    static double limit(Case published, Expected wanted) {
        boolean construction = wanted.given().has("during");
        return DoubleStream.iterate(0.5, x -> x < 200, x -> x + 0.5)
                .filter(x -> Section3_7.slenderness(x, 1, construction) instanceof Outcome.Value)
                .max()
                .orElseThrow();
    }

    static double endGrain(Case published, Expected wanted) {
        return Section3_10.endGrain(1e6, false).value()
                / Section3_10.endGrain(1e6, true).value();
    }

    /** Ryk is what the judge allows times the factor that it divides by. */
    static double prop(Case published, Expected wanted) {
        Inputs row = wanted.given();
        String mark = row.text("class");
        PropClass named = new PropClass(
                PropClass.Letter.valueOf(mark.substring(0, 1)), Integer.parseInt(mark.substring(1)) / 10.0);
        double allowed = Props.judged(PropClassJudge.judge(named, row.number("length_m"), 1))
                .capacity();
        return wanted.name().equals("permissible") ? allowed : allowed * 1.1 * 1.5;
    }
}
