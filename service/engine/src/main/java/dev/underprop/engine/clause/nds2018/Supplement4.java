package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** NDS Supplement 2018, Tables 4A and 4B: adjustment factors of visually graded dimension lumber. */
public final class Supplement4 {

    private static final Citation SIZE = Citation.read("NDS Supplement", "2018", "Table 4A, size factor");
    private static final Citation SIZE_SP = Citation.read("NDS Supplement", "2018", "Table 4B");
    private static final Citation WET = Citation.read("NDS Supplement", "2018", "Table 4A, wet service factor");

    /** Nominal widths of the table and the greatest actual width (in) counted as each. */
    private static final double[] WIDTHS = {3.5, 4.5, 5.5, 7.25, 9.25, 11.25};

    private static final double[] THIN = {1.5, 1.4, 1.3, 1.2, 1.1, 1.0, 0.9};
    private static final double[] FOUR_INCH = {1.5, 1.4, 1.3, 1.3, 1.2, 1.1, 1.0};
    private static final double[] STUD = {1.1, 1.0, 1.0};

    private Supplement4() {}

    /**
     * Size factor CF for bending. A built-up beam takes the factor of one ply. A width between two rows takes the
     * smaller factor.
     *
     * @param grade timber
     * @param breadth thickness of one ply (m)
     * @param depth width of one ply (m)
     * @throws IllegalArgumentException where the tables give none: thicker than nominal 4 in, or a stud wider than
     *     nominal 6 in
     */
    public static Cited sizeBending(WoodGrade grade, double breadth, double depth) {
        if (!hasSizeFactor(grade, breadth, depth)) {
            throw new IllegalArgumentException("the tables of dimension lumber give no size factor for this section");
        }
        boolean fourInch = breadth / Units.INCH > 2.5 + 1e-6;
        int row = row(depth);
        return switch (grade.sizes()) {
            case SIZE_FACTOR -> new Cited((fourInch ? FOUR_INCH : THIN)[row], "CF", SIZE);
            case STUD -> new Cited(STUD[row], "CF", SIZE);
            case IN_THE_VALUES -> new Cited(southernPine(fourInch, row), "CF", SIZE_SP);
        };
    }

    /** Whether the tables give a size factor for the section. */
    public static boolean hasSizeFactor(WoodGrade grade, double breadth, double depth) {
        boolean dimension = breadth / Units.INCH < 4.5 && breadth / Units.INCH > 1.0;
        return dimension && (grade.sizes() != WoodGrade.Sizes.STUD || row(depth) <= 2);
    }

    private static double southernPine(boolean fourInch, int row) {
        if (row == WIDTHS.length) {
            return 0.9;
        }
        return fourInch && row >= 3 ? 1.1 : 1.0;
    }

    private static int row(double depth) {
        int row = 0;
        while (row < WIDTHS.length && depth / Units.INCH > WIDTHS[row] + 1e-6) {
            row++;
        }
        return row;
    }

    /** Wet service factor CM for bending: 0.85, or 1.0 where Fb·CF does not exceed 1150 psi. */
    public static Cited wetBending(double bendingTimesSize) {
        return new Cited(bendingTimesSize <= 1150 * Units.PSI * (1 + 1e-12) ? 1.0 : 0.85, "CM", WET);
    }

    /** Wet service factor CM for shear. */
    public static Cited wetShear() {
        return new Cited(0.97, "CM", WET);
    }

    /** Wet service factor CM for compression perpendicular to grain. */
    public static Cited wetBearing() {
        return new Cited(0.67, "CM", WET);
    }

    /** Wet service factor CM for E and Emin. */
    public static Cited wetModulus() {
        return new Cited(0.9, "CM", WET);
    }
}
