package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Admissible;

/**
 * Ground as a theory of bearing capacity sees it.
 *
 * @param cohesion c (Pa), not negative; the undrained strength where friction is 0
 * @param friction angle of friction (rad), from 0 to {@link #STEEPEST}
 * @param unitWeight below the base, effective (N/m³), not negative
 * @param overburden effective pressure beside the base at its level (Pa), not negative
 */
public record Soil(double cohesion, double friction, double unitWeight, double overburden) {

    /** The tables of every author end here, 45 degrees (rad). */
    public static final double STEEPEST = StrictMath.PI / 4;

    /** Rounding of an angle that was converted (rad). */
    private static final double ROUNDING = 1e-12;

    public Soil {
        Admissible.notNegative(cohesion, "cohesion");
        Admissible.notNegative(friction, "angle of friction");
        Admissible.notNegative(unitWeight, "unit weight");
        Admissible.notNegative(overburden, "overburden");
        if (friction > STEEPEST + ROUNDING) {
            throw new IllegalArgumentException("no author gives factors beyond 45 degrees");
        }
    }
}
