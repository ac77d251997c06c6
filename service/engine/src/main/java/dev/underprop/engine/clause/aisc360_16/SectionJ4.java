package dev.underprop.engine.clause.aisc360_16;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section J4: strength of connecting elements. */
public final class SectionJ4 {

    private static final Citation SHEAR = Citation.remembered("AISC", "360-16", "J4.2(a), Omega 1.50");
    private static final Citation COMPRESSION = Citation.remembered("AISC", "360-16", "J4.4(a), Omega 1.67");

    private SectionJ4() {}

    /** Allowable shear 0.60 Fy·A/Omega (N). @param yield Fy (Pa), positive @param area in shear (m²), positive */
    public static Cited shear(double yield, double area) {
        return new Cited(
                0.6 * Admissible.positive(yield, "Fy") * Admissible.positive(area, "A") / 1.5, "Rn/Omega", SHEAR);
    }

    /** Allowable compression Fy·A/Omega of a short piece (N). @param yield Fy (Pa), positive @param area (m²), positive */
    public static Cited compression(double yield, double area) {
        return new Cited(
                Admissible.positive(yield, "Fy") * Admissible.positive(area, "A") / 1.67, "Pn/Omega", COMPRESSION);
    }
}
