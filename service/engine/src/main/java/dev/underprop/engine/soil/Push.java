package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Admissible;

/**
 * How a load presses on a base and pushes it sideways, at its underside. Which way it pushes is not known: across the base's
 * shorter side is worst, and that is what every author's factors are taken for.
 *
 * @param pressure upright force over the area that bears (Pa), not negative
 * @param tilt sideways force over upright force, not negative
 */
public record Push(double pressure, double tilt) {

    /** Upright, however hard. */
    public static final Push UPRIGHT = new Push(0, 0);

    public Push {
        Admissible.notNegative(pressure, "pressure");
        Admissible.notNegative(tilt, "tilt");
    }

    /** H over V + A' c cot phi, with friction; A' the area that bears. */
    double share(Soil soil) {
        double held = pressure + soil.cohesion() / StrictMath.tan(soil.friction());
        return held > 0 ? tilt * pressure / held : tilt;
    }

    /** H over A' c, without friction. */
    double shear(Soil soil) {
        return tilt == 0 || pressure == 0 ? 0 : tilt * pressure / soil.cohesion();
    }

    /** Whether the ground itself shears off under the base before it gives way below: H above V tan phi + A' c. */
    boolean slides(Soil soil) {
        return tilt * pressure > pressure * StrictMath.tan(soil.friction()) + soil.cohesion();
    }
}
