package dev.underprop.engine.clause.aisc360_16;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section J7: bearing of pins in reamed, drilled or bored holes. */
public final class SectionJ7 {

    private static final Citation BEARING = Citation.remembered("AISC", "360-16", "J7(a), Omega 2.00");

    private SectionJ7() {}

    /**
     * Allowable bearing 1.8 Fy·Apb/Omega of a pin (N).
     *
     * @param yield Fy of the weaker part (Pa), positive
     * @param diameter of the pin (m), positive
     * @param thickness of all walls that it bears on (m), positive
     */
    public static Cited bearing(double yield, double diameter, double thickness) {
        double area = Admissible.positive(diameter, "diameter") * Admissible.positive(thickness, "thickness");
        return new Cited(1.8 * Admissible.positive(yield, "Fy") * area / 2, "Rn/Omega", BEARING);
    }

    /**
     * Allowable pressure of steel on steel that touches all over, Rn/Omega over the area with Rn = 1.8 Fy A (Pa).
     *
     * @param yield Fy of the weaker (Pa), positive
     */
    public static Cited contact(double yield) {
        return new Cited(1.8 * Admissible.positive(yield, "Fy") / 2, "Rn/(Omega A)", BEARING);
    }
}
