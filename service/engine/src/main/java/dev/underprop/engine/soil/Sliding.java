package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** What holds a base against sliding on its ground: H no more than V tan delta + A' ca over a factor of safety. */
public final class Sliding {

    private static final Citation RULE = Citation.remembered(
            "EN 1997-1",
            "2004",
            "6.5.3, smooth base: delta two thirds of phi, no adhesion with friction; A' cu without");

    /** Factor of safety against sliding: IBC 2021 1807.2.3, from memory. */
    public static final double SAFETY = 1.5;

    /** Friction of a base that was not cast on the ground, over that of the ground. */
    private static final double SMOOTH = 2.0 / 3;

    private Sliding() {}

    /**
     * The greatest sideways force over upright force that is allowed.
     *
     * @param soil under the base
     * @param pressure upright force over the area that bears (Pa), positive
     */
    public static Cited allowed(Soil soil, double pressure) {
        Admissible.positive(pressure, "pressure");
        double held = soil.friction() > 0 ? StrictMath.tan(SMOOTH * soil.friction()) : soil.cohesion() / pressure;
        return new Cited(held / SAFETY, "H / V", RULE);
    }
}
