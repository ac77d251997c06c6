package dev.underprop.engine.assess;

import dev.underprop.engine.clause.nds2018.DesignValue;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.clause.nds2018.Section2_3;
import dev.underprop.engine.clause.nds2018.Section3_10;
import dev.underprop.engine.clause.nds2018.Section4_3;
import dev.underprop.engine.clause.nds2018.Supplement4;
import dev.underprop.engine.clause.nds2018.Temperature;
import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Outcome;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Inputs;

/** The factors of the timber standard. */
final class FactorFigures {

    private static final Citation STATED = Citation.read("example", "", "as the row states");
    private static final double INCH = Plans.INCH;

    private FactorFigures() {}

    static double size(Case published, Expected wanted) {
        boolean stud = published.inputs().texts("grades").contains("Stud");
        WoodGrade grade = grade(stud ? WoodGrade.Sizes.WESTERN_STUD : WoodGrade.Sizes.WESTERN_DIMENSION, 1000);
        Inputs row = wanted.given();
        int thickness = row.has("nominalThickness_in") ? (int) row.number("nominalThickness_in") : 2;
        RectangularSection ply = ply(thickness, (int) row.number("nominalWidth_in"));
        return value(Supplement4.size(designValue(wanted), grade, ply));
    }

    static double wetService(Case published, Expected wanted) {
        boolean timber = published.inputs().text("table").equals("4D");
        WoodGrade.Sizes table = timber ? WoodGrade.Sizes.TIMBER_4D : WoodGrade.Sizes.WESTERN_DIMENSION;
        WoodGrade grade = grade(table, referencePsi(wanted.given()));
        DesignValue value = designValue(wanted);
        return value.factors().contains("CF")
                ? Supplement4.wetService(value, grade, new Cited(1, "CF", STATED), Moisture.WET)
                        .value()
                : Supplement4.wetService(value, grade, Moisture.WET).value();
    }

    /** The limits of the exceptions where the row has one, else far above both. */
    private static double referencePsi(Inputs row) {
        if (row.has("FbTimesCF_psi")) {
            return row.number("FbTimesCF_psi");
        }
        return row.has("FcTimesCF_psi") ? row.number("FcTimesCF_psi") : 2000;
    }

    static double flatUse(Case published, Expected wanted) {
        Inputs row = wanted.given();
        RectangularSection board = ply((int) row.number("nominalThickness_in"), (int) row.number("nominalWidth_in"));
        WoodGrade grade = grade(WoodGrade.Sizes.WESTERN_DIMENSION, 1000);
        return value(Supplement4.flatUse(grade, board.breadth(), board.depth()));
    }

    static double repetitive(Case published, Expected wanted) {
        return Section4_3.repetitive(3, 24 * INCH, true, 1.5 * INCH).value();
    }

    static double loadDuration(Case published, Expected wanted) {
        LoadDuration duration = switch (wanted.given().text("duration")) {
            case "permanent" -> LoadDuration.PERMANENT;
            case "ten years" -> LoadDuration.TEN_YEARS;
            case "two months" -> LoadDuration.TWO_MONTHS;
            case "seven days" -> LoadDuration.SEVEN_DAYS;
            case "ten minutes" -> LoadDuration.TEN_MINUTES;
            case "impact" -> LoadDuration.IMPACT;
            default -> throw new IllegalArgumentException(wanted.toString());
        };
        return Section2_3.loadDuration(duration).value();
    }

    static double bearingArea(Case published, Expected wanted) {
        double toEnd = published.inputs().number("leastDistanceToEnd_in") * INCH;
        return Section3_10.areaFactor(wanted.given().number("bearingLength_in") * INCH, toEnd)
                .value();
    }

    static double temperature(Case published, Expected wanted) {
        Temperature temperature = switch (wanted.given().text("temperature")) {
            case "up to 100 F" -> Temperature.ORDINARY;
            case "100 F to 125 F" -> Temperature.WARM;
            case "125 F to 150 F" -> Temperature.HOT;
            default -> throw new IllegalArgumentException(wanted.toString());
        };
        Moisture moisture = wanted.given().text("moisture").equals("wet") ? Moisture.WET : Moisture.DRY;
        return Section2_3.temperature(designValue(wanted), temperature, moisture)
                .value();
    }

    private static DesignValue designValue(Expected wanted) {
        String name = wanted.name();
        return switch (name.substring(name.indexOf('.') + 1)) {
            case "Fb" -> DesignValue.BENDING;
            case "Ft" -> DesignValue.TENSION;
            case "Fv" -> DesignValue.SHEAR;
            case "Fc" -> DesignValue.COMPRESSION;
            case "Fc_perp" -> DesignValue.BEARING;
            case "E" -> DesignValue.MODULUS;
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static RectangularSection ply(int thickness, int width) {
        return new RectangularSection((thickness - 0.5) * INCH, Simple.dressed(width) * INCH);
    }

    private static WoodGrade grade(WoodGrade.Sizes sizes, double psi) {
        double stress = psi * Plans.PSI;
        return new WoodGrade(
                "as stated", "as stated", stress, stress, stress, stress, stress, 1e10, 5e9, 0.5, sizes, STATED);
    }

    static double value(Outcome outcome) {
        if (outcome instanceof Outcome.Value value) {
            return value.cited().value();
        }
        throw new IllegalStateException(((Outcome.Refused) outcome).reason());
    }
}
