package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Bearing capacity where the ground is not of one kind down to where a base is felt. */
public final class Layers {

    private static final Citation RIGID = Citation.read(
            "Das, Principles of Foundation Engineering", "companion edition", "4.2, clay on a rough rigid base");
    private static final Citation PUNCHING = Citation.remembered(
            "Meyerhof and Hanna",
            "1978",
            "stronger over weaker clay; adhesion taken as half of the strength of the upper");

    /** Nc of a strip and of the whole of that book's rule. */
    private static final double NC = 5.14;

    /** Part of the upper layer's strength that acts on the sides of what is punched through it. */
    private static final double ADHESION = 0.5;

    private Layers() {}

    /**
     * Ultimate pressure of a square base on clay over a rigid layer (Pa). More than without it: for comparison, never for sizing.
     *
     * @param strength undrained (Pa)
     * @param breadth B (m), positive
     * @param thickness H of the clay below the base (m), positive
     * @param overburden (Pa)
     */
    public static Cited rigidBase(double strength, double breadth, double thickness, double overburden) {
        double squeezed = Math.max(0, 0.5 * breadth / thickness - 0.707);
        return new Cited((NC + squeezed) * strength + overburden, "qu", RIGID);
    }

    /**
     * What the sides of a block of clay under a base carry when it is punched through the clay, over the base's area (Pa).
     *
     * @param strength undrained, of the clay (Pa), not negative
     * @param along size of the base (m), positive
     * @param across other size (m), positive
     * @param thickness of the clay below the base (m), positive
     */
    public static Cited sides(double strength, double along, double across, double thickness) {
        double around = 2 * (along + across) * thickness;
        return new Cited(ADHESION * strength * around / (along * across), "2 ca H (1/B + 1/L)", PUNCHING);
    }
}
