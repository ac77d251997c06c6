package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;

/**
 * Table 4D: visually graded timbers, 5 in by 5 in nominal and larger, loaded on the narrow face.
 *
 * <p>Deviation: Southern Pine timbers are tabulated for wet or dry service alike; here the wet service factor reduces them
 * as well, which is the safe side.
 */
final class Supplement4D {

    static final Citation SIZE = Citation.read("NDS Supplement", "2018", "Table 4D, size factor CF");
    static final Citation WET = Citation.read("NDS Supplement", "2018", "Table 4D, wet service factor CM");

    /** Depth beyond which bending falls (m). */
    private static final double FULL_DEPTH = 12 * Units.INCH;

    private Supplement4D() {}

    static Outcome size(DesignValue value, RectangularSection timber) {
        if (!Lumber.isTimber(Math.min(timber.breadth(), timber.depth()))) {
            return new Outcome.Refused("the table covers nominal 5 in by 5 in and larger only", SIZE);
        }
        boolean bending = value == DesignValue.BENDING || value == DesignValue.BENDING_STAR;
        double factor =
                bending && timber.depth() > FULL_DEPTH ? StrictMath.pow(FULL_DEPTH / timber.depth(), 1.0 / 9.0) : 1.0;
        return Outcome.of(factor, "CF", SIZE);
    }

    static double wet(DesignValue value) {
        return switch (value) {
            case COMPRESSION, COMPRESSION_STAR -> 0.91;
            case BEARING -> 0.67;
            case BENDING, BENDING_STAR, TENSION, SHEAR, MODULUS, MODULUS_MIN -> 1.0;
        };
    }
}
