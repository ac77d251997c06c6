package dev.underprop.engine.clause.aisc360_16;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;
import java.util.Locale;

/** Section E3: flexural buckling of members without slender elements. */
public final class SectionE3 {

    private static final Citation STRENGTH = Citation.remembered("AISC", "360-16", "E3, Omega 1.67 (E1)");
    private static final Citation SLENDERNESS = Citation.remembered("AISC", "360-16", "E2, user note");
    private static final Citation WALL = Citation.remembered("AISC", "360-16", "Table B4.1a, case 9");

    /** E of steel, 29000 ksi (Pa). */
    private static final double MODULUS = 29e6 * 4.4482216152605 / (0.0254 * 0.0254);

    private static final double OMEGA = 1.67;
    private static final double MOST = 200;

    /** Fy/Fe up to which a column buckles inelastically. */
    public static final double INELASTIC = 2.25;

    private SectionE3() {}

    /**
     * Allowable axial stress Fcr/Omega (Pa).
     *
     * @param yield Fy (Pa), positive
     * @param slenderness Lc/r, positive; refused above 200
     */
    public static Outcome stress(double yield, double slenderness) {
        Admissible.positive(yield, "Fy");
        if (Admissible.positive(slenderness, "Lc/r") > MOST) {
            String got = String.format(Locale.ROOT, "%.0f", slenderness);
            return new Outcome.Refused("a slenderness of " + got + " is beyond 200", SLENDERNESS);
        }
        double euler = Math.PI * Math.PI * MODULUS / (slenderness * slenderness);
        double critical = yield / euler <= INELASTIC ? StrictMath.pow(0.658, yield / euler) * yield : 0.877 * euler;
        return Outcome.of(critical / OMEGA, "Fcr/Omega", STRENGTH);
    }

    /**
     * Diameter over wall of a round tube, where its wall does not buckle by itself; refused beyond 0.11 E/Fy.
     *
     * @param diameter outside (m), positive
     * @param wall (m), positive
     * @param yield Fy (Pa), positive
     */
    public static Outcome wall(double diameter, double wall, double yield) {
        double got = Admissible.positive(diameter, "diameter") / Admissible.positive(wall, "wall");
        double limit = 0.11 * MODULUS / Admissible.positive(yield, "Fy");
        return got <= limit
                ? Outcome.of(got, "D/t", WALL)
                : new Outcome.Refused(
                        String.format(Locale.ROOT, "a wall of 1/%.0f of the diameter buckles by itself", got), WALL);
    }
}
