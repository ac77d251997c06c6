package dev.underprop.engine.clause.aisc360_16;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section J3: shear of bolts and pins of threaded or plain round bar. */
public final class SectionJ3 {

    private static final Citation SHEAR = Citation.remembered("AISC", "360-16", "J3.6 and Table J3.2, Omega 2.00");

    private static final double OMEGA = 2;

    private SectionJ3() {}

    /** Nominal shear stress Fnv = 0.450 Fu, threads or not (Pa). @param strength Fu (Pa), positive */
    public static Cited shearStress(double strength) {
        return new Cited(0.45 * Admissible.positive(strength, "Fu"), "Fnv", SHEAR);
    }

    /**
     * Allowable shear Fnv·Ab/Omega over all planes (N).
     *
     * @param stress Fnv (Pa), positive
     * @param diameter (m), positive
     * @param planes number of shear planes, at least 1
     */
    public static Cited shear(double stress, double diameter, int planes) {
        double area = Math.PI / 4 * Admissible.positive(diameter, "diameter") * diameter;
        return new Cited(Admissible.positive(stress, "Fnv") * area * planes / OMEGA, "Rn/Omega", SHEAR);
    }
}
