package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 3.10: design for bearing. */
public final class Section3_10 {

    private static final Citation AREA_FACTOR = Citation.read("NDS", "2018", "3.10.4, Eq. 3.10-2");

    private Section3_10() {}

    /**
     * Bearing area factor Cb = (lb + 0.375 in)/lb for a bearing shorter than 6 in and not nearer than 3 in to the
     * member's end; 1 otherwise.
     *
     * @param length of the bearing along the grain (m), positive
     * @param toEnd from the bearing's edge to the member's end (m)
     */
    public static Cited areaFactor(double length, double toEnd) {
        double inches = length / Units.INCH;
        boolean increases = inches < 6 && toEnd >= 3 * Units.INCH;
        return new Cited(increases ? (inches + 0.375) / inches : 1, "Cb", AREA_FACTOR);
    }
}
