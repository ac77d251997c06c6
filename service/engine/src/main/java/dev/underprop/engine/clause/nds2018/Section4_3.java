package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 4.3: adjustment of reference design values of sawn lumber. */
public final class Section4_3 {

    /** Table 4.3.1, which factors apply to which value. */
    public static final Citation TABLE_4_3_1 = Citation.read("NDS", "2018", "Table 4.3.1");

    private static final Citation REPETITIVE = Citation.read("NDS", "2018", "4.3.9");

    private Section4_3() {}

    /**
     * Repetitive member factor Cr, 1.15 for bending of dimension lumber 2 to 4 in thick, at least three of them in
     * contact or at most 24 in apart, joined by a load-distributing element; 1 otherwise.
     *
     * @param members how many run side by side
     * @param spacing greatest distance between neighbours (m)
     * @param thickness of one member (m)
     */
    public static Cited repetitive(int members, double spacing, double thickness) {
        boolean close = spacing <= 24 * Units.INCH * (1 + 1e-9);
        boolean dimension = thickness / Units.INCH > 1.4 && thickness / Units.INCH < 4.5;
        return new Cited(members >= 3 && close && dimension ? 1.15 : 1, "Cr", REPETITIVE);
    }
}
