package dev.underprop.engine.clause.aisc360_16;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;
import java.util.Locale;

/** Section F8: round tubes in bending, compact ones only. */
public final class SectionF8 {

    private static final Citation YIELDING = Citation.remembered("AISC", "360-16", "F8.1, Omega 1.67 (F1)");
    private static final Citation WALL = Citation.remembered("AISC", "360-16", "Table B4.1b, case 20");

    /** E of steel, 29000 ksi (Pa). */
    private static final double MODULUS = 29e6 * 4.4482216152605 / (0.0254 * 0.0254);

    private static final double OMEGA = 1.67;

    private SectionF8() {}

    /**
     * Allowable moment Mn/Omega of a round tube (N·m), Mn = Fy·Z; refused for a wall thinner than 1/(0.07 E/Fy).
     *
     * @param diameter outside (m), positive
     * @param wall (m), positive, at most half of the diameter
     * @param yield Fy (Pa), positive
     */
    public static Outcome moment(double diameter, double wall, double yield) {
        double ratio = Admissible.positive(diameter, "diameter") / Admissible.positive(wall, "wall");
        if (ratio > 0.07 * MODULUS / Admissible.positive(yield, "Fy")) {
            return new Outcome.Refused(
                    String.format(Locale.ROOT, "a wall of 1/%.0f of the diameter is not compact", ratio), WALL);
        }
        double inside = diameter - 2 * wall;
        double modulus = (diameter * diameter * diameter - inside * inside * inside) / 6;
        return Outcome.of(yield * modulus / OMEGA, "Mn/Omega", YIELDING);
    }
}
