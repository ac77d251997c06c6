package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 3.4: bending members, shear. */
public final class Section3_4 {

    private static final Citation SHEAR = Citation.read("NDS", "2018", "3.4.2, Eq. 3.4-2");

    private Section3_4() {}

    /** Shear stress of a rectangle, fv = 3V/2A (Pa). @param shear (N) @param area b·d (m²) */
    public static Cited shearStress(double shear, double area) {
        return new Cited(1.5 * shear / area, "fv", SHEAR);
    }
}
