package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;

/**
 * Table 4B: visually graded Southern Pine dimension lumber. Its values are tabulated by width, so the size is in them; what
 * is left is a rise for bending of boards 4 in thick and 8 to 12 in wide, and a fall beyond 12 in.
 *
 * <p>Deviation: the table would let a board 4 in thick and wider than 12 in have both; here it takes the fall only.
 */
final class Supplement4B {

    private static final Citation SIZE = Citation.read("NDS Supplement", "2018", "Table 4B, size factor CF");

    /** Row of {@link Supplement4A#row} for wider than nominal 12 in. */
    private static final int WIDER = 6;

    private Supplement4B() {}

    static Outcome size(DesignValue value, RectangularSection ply) {
        if (!Lumber.isDimension(ply.breadth())) {
            return Supplement4A.notDimension(SIZE);
        }
        return Outcome.of(factor(value, ply), "CF", SIZE);
    }

    private static double factor(DesignValue value, RectangularSection ply) {
        if (Supplement4A.row(ply.depth()) == WIDER) {
            return 0.9;
        }
        boolean bending = value == DesignValue.BENDING || value == DesignValue.BENDING_STAR;
        return bending && Lumber.isEightWide(ply.depth()) && Lumber.isFourThick(ply.breadth()) ? 1.1 : 1.0;
    }
}
