package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Admissible;

/**
 * Size classes of sawn lumber, told from actual sizes (NDS 2018, 4.1.3, and Supplement, Table 1A).
 *
 * <p>The tables go by nominal sizes. Old houses have boards sawn to full size or shrunk a little, so the class is taken
 * from the actual size, and a size between two rows takes the row with the smaller factor.
 */
final class Lumber {

    /** What a tape can tell (m), 1/16 in; common practice, no source. */
    private static final double TAPE = Units.INCH / 16;

    /** Thickness of dressed nominal 2 in (m). */
    private static final double TWO = 1.5 * Units.INCH;

    /** Thickness of nominal 4 in sawn to full size (m). */
    private static final double FULL_FOUR = 4 * Units.INCH;

    /** Thickness of dressed nominal 4 in (m). */
    private static final double FOUR = 3.5 * Units.INCH;

    /** Thickness of dressed nominal 5 in (m). */
    private static final double FIVE = 4.5 * Units.INCH;

    /** Width of dressed nominal 8 in (m). */
    private static final double EIGHT = 7.25 * Units.INCH;

    private Lumber() {}

    /** Whether a board is dimension lumber, nominal 2 to 4 in thick. @param thickness (m), positive */
    static boolean isDimension(double thickness) {
        Admissible.positive(thickness, "thickness");
        return Units.atLeast(thickness, TWO - TAPE) && Units.atMost(thickness, FULL_FOUR + TAPE);
    }

    /** Whether a board is as thick as nominal 4 in, where the tables tell that from 2 and 3 in. @param thickness (m) */
    static boolean isFourThick(double thickness) {
        return Units.atLeast(thickness, FOUR);
    }

    /** Whether a board is as wide as dressed nominal 8 in; one between 6 and 8 in is not. @param width (m) */
    static boolean isEightWide(double width) {
        return Units.atLeast(width, EIGHT);
    }

    /** Whether a stick is a timber, nominal 5 in and more in its lesser size. @param lesser (m), positive */
    static boolean isTimber(double lesser) {
        Admissible.positive(lesser, "lesser size");
        return Units.atLeast(lesser, FIVE - TAPE);
    }
}
