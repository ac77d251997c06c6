package dev.underprop.engine.clause.aisc360_16;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section F11: bars, here a plate bent about its weak axis, and round ones. */
public final class SectionF11 {

    private static final Citation YIELDING = Citation.remembered("AISC", "360-16", "F11.1, Omega 1.67 (F1)");

    private static final double OMEGA = 1.67;

    /** The moment is at most so many times that at first yield. */
    private static final double MOST = 1.6;

    private SectionF11() {}

    /**
     * Allowable moment of a strip of plate, Mn/Omega with Mn = Fy·Z, at most 1.6 Fy·S (N·m per m of width, so N).
     *
     * @param yield Fy (Pa), positive
     * @param thickness (m), positive
     */
    public static Cited plate(double yield, double thickness) {
        Admissible.positive(yield, "Fy");
        double square = Admissible.positive(thickness, "thickness") * thickness;
        double moment = Math.min(yield * square / 4, MOST * yield * square / 6);
        return new Cited(moment / OMEGA, "Mn/Omega", YIELDING);
    }

    /**
     * Allowable moment of a round bar, Mn/Omega with Mn = Fy·Z, at most 1.6 Fy·S (N·m).
     *
     * @param yield Fy (Pa), positive
     * @param diameter (m), positive
     */
    public static Cited round(double yield, double diameter) {
        Admissible.positive(yield, "Fy");
        double cube = Admissible.positive(diameter, "diameter") * diameter * diameter;
        double moment = Math.min(yield * cube / 6, MOST * yield * Math.PI * cube / 32);
        return new Cited(moment / OMEGA, "Mn/Omega", YIELDING);
    }
}
