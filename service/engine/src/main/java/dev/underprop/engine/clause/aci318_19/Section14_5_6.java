package dev.underprop.engine.clause.aci318_19;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Outcome;
import java.util.Locale;

/** Section 14.5.6: bearing on plain concrete. Strength design: the demand is a factored load. */
public final class Section14_5_6 {

    private static final Citation STRENGTH = Citation.remembered("ACI", "318-19", "Table 14.5.6.1 and 21.2.1");
    private static final Citation LEAST = Citation.remembered("ACI", "318-19", "Table 19.2.1.1");
    private static final Citation AREA = Citation.remembered("ACI", "318-19", "R22.8.3.2");

    /** One pound-force per square inch (Pa). */
    private static final double PSI = 4.4482216152605 / (0.0254 * 0.0254);

    /** Strength reduction factor of plain concrete. */
    private static final double PHI = 0.60;

    private static final double LEAST_PSI = 2500;

    /** Part of a limit that conversion of units may cost. */
    private static final double ROUNDING = 1e-9;

    private Section14_5_6() {}

    /**
     * Design bearing strength phi·Bn (N) under a loaded area, Bn = 0.85 f'c A1 times the root of A2/A1, and the root counts
     * 2 at most.
     *
     * @param strength f'c (Pa), positive; refused below 2500 psi
     * @param loaded A1 (m²), positive
     * @param support A2 (m²), not less than A1
     */
    public static Outcome bearing(double strength, double loaded, double support) {
        double psi = Admissible.positive(strength, "f'c") / PSI;
        if (psi < LEAST_PSI * (1 - ROUNDING)) {
            String got = String.format(Locale.ROOT, "%.0f", psi);
            return new Outcome.Refused("concrete of " + got + " psi is below the least strength of 2500 psi", LEAST);
        }
        Admissible.positive(loaded, "A1");
        if (Admissible.positive(support, "A2") < loaded * (1 - ROUNDING)) {
            throw new IllegalArgumentException("A2 must not be less than A1");
        }
        double wider = Math.min(2, Math.sqrt(support / loaded));
        return Outcome.of(PHI * 0.85 * strength * loaded * wider, "phi·Bn", STRENGTH);
    }

    /**
     * A2 (m²): the lower base of the largest frustum within the support whose upper base is the loaded area, its sides
     * sloping 1 down to 2 out. Base and loaded area are alike in shape, and both conditions are kept: the area is that of
     * the shape scaled up as far as the support and the slope let it go in the tighter direction.
     *
     * @param along length of the loaded rectangle (m), positive
     * @param across its width (m), positive
     * @param supportAlong length of the support under its middle (m), not less
     * @param supportAcross width of the support (m), not less
     * @param thickness of the support (m), positive
     */
    public static Cited support(
            double along, double across, double supportAlong, double supportAcross, double thickness) {
        double longer = Math.max(Admissible.positive(along, "plate"), Admissible.positive(across, "plate"));
        double slope = 1 + 4 * Admissible.positive(thickness, "thickness") / longer;
        double scale = Math.min(slope, Math.min(supportAlong / along, supportAcross / across));
        return new Cited(scale * scale * along * across, "A2", AREA);
    }
}
