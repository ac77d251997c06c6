package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;

/**
 * Table 4A: visually graded dimension lumber of all species but Southern Pine.
 *
 * <p>Deviation: the table goes by nominal sizes; here a width counts as the first row whose dressed size it does not
 * exceed, so that a width between two rows takes the smaller factor (for flat use, where factors grow with width: the last
 * row that it reaches).
 */
final class Supplement4A {

    static final Citation WET = Citation.read("NDS Supplement", "2018", "Tables 4A and 4B, wet service factor CM");
    static final Citation FLAT = Citation.read("NDS Supplement", "2018", "Tables 4A and 4B, flat use factor Cfu");

    private static final Citation SIZE = Citation.read("NDS Supplement", "2018", "Table 4A, size factor CF");

    /** Dressed widths of nominal 4, 5, 6, 8, 10 and 12 in; the last row of each table is for wider. */
    private static final double[] WIDTHS = inches(3.5, 4.5, 5.5, 7.25, 9.25, 11.25);

    private static final double[] BENDING = {1.5, 1.4, 1.3, 1.2, 1.1, 1.0, 0.9};
    private static final double[] BENDING_FOUR = {1.5, 1.4, 1.3, 1.3, 1.2, 1.1, 1.0};
    private static final double[] TENSION = {1.5, 1.4, 1.3, 1.2, 1.1, 1.0, 0.9};
    private static final double[] COMPRESSION = {1.15, 1.1, 1.1, 1.05, 1.0, 1.0, 0.9};

    private static final int STUD_WIDEST = 2;

    /** Dressed widths from which the rows of the flat use factor hold: nominal 4, 5, 6, 8 and 10 in. */
    private static final double[] FLAT_WIDTHS = inches(3.5, 4.5, 5.5, 7.25, 9.25);

    /** Thickness of dressed nominal 3 in; whatever is thicker takes the lesser factors of 4 in. */
    private static final double THREE = 2.5 * Units.INCH;

    private static final double[] FLAT_THIN = {1.0, 1.1, 1.1, 1.15, 1.15, 1.2};
    private static final double[] FLAT_FOUR = {1.0, 1.0, 1.05, 1.05, 1.05, 1.1};

    /** Reference stress times size factor up to which bending keeps its value when wet (Pa). */
    private static final double WET_BENDING = 1150 * Units.PSI;

    /** The same for compression parallel to grain (Pa). */
    private static final double WET_COMPRESSION = 750 * Units.PSI;

    private Supplement4A() {}

    static Outcome size(DesignValue value, RectangularSection ply) {
        if (!Lumber.isDimension(ply.breadth())) {
            return notDimension(SIZE);
        }
        int row = row(ply.depth());
        return Outcome.of(column(value, Lumber.isFourThick(ply.breadth()))[row], "CF", SIZE);
    }

    private static double[] column(DesignValue value, boolean four) {
        return switch (value) {
            case BENDING, BENDING_STAR -> four ? BENDING_FOUR : BENDING;
            case TENSION -> TENSION;
            case COMPRESSION, COMPRESSION_STAR -> COMPRESSION;
            default -> throw new IllegalArgumentException(value.symbol() + " has no size factor");
        };
    }

    /** Stud grade; wider than nominal 6 in the table sends to the values of No. 3, which is another grade. */
    static Outcome studSize(DesignValue value, RectangularSection ply) {
        if (!Lumber.isDimension(ply.breadth())) {
            return notDimension(SIZE);
        }
        int row = row(ply.depth());
        if (row > STUD_WIDEST) {
            return new Outcome.Refused("stud grade wider than nominal 6 in takes the values of No. 3", SIZE);
        }
        boolean compression = value == DesignValue.COMPRESSION || value == DesignValue.COMPRESSION_STAR;
        return Outcome.of(row > 0 ? 1.0 : compression ? 1.05 : 1.1, "CF", SIZE);
    }

    static double wet(DesignValue value, double referenceTimesSize) {
        return switch (value) {
            case BENDING, BENDING_STAR -> Units.atMost(referenceTimesSize, WET_BENDING) ? 1.0 : 0.85;
            case TENSION -> 1.0;
            case SHEAR -> 0.97;
            case BEARING -> 0.67;
            case COMPRESSION, COMPRESSION_STAR -> Units.atMost(referenceTimesSize, WET_COMPRESSION) ? 1.0 : 0.8;
            case MODULUS, MODULUS_MIN -> 0.9;
        };
    }

    static Outcome flatUse(double thickness, double width) {
        if (!Lumber.isDimension(thickness)) {
            return notDimension(FLAT);
        }
        boolean four = !Units.atMost(thickness, THREE);
        if (four && !Units.atLeast(width, FLAT_WIDTHS[0])) {
            return new Outcome.Refused("the table gives no flat use factor for a board this thick and narrow", FLAT);
        }
        int row = 0;
        while (row < FLAT_WIDTHS.length && Units.atLeast(width, FLAT_WIDTHS[row])) {
            row++;
        }
        return Outcome.of((four ? FLAT_FOUR : FLAT_THIN)[row], "Cfu", FLAT);
    }

    /** Row of the size tables: nominal 4 in and narrower, 5, 6, 8, 10, 12 in, wider. */
    static int row(double width) {
        int row = 0;
        while (row < WIDTHS.length && !Units.atMost(width, WIDTHS[row])) {
            row++;
        }
        return row;
    }

    static Outcome notDimension(Citation table) {
        return new Outcome.Refused("the table covers nominal 2 to 4 in thick only", table);
    }

    private static double[] inches(double... sizes) {
        double[] metres = new double[sizes.length];
        for (int i = 0; i < sizes.length; i++) {
            metres[i] = sizes[i] * Units.INCH;
        }
        return metres;
    }
}
