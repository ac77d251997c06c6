package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Admissible;

/**
 * Ground of one kind with water in it at some depth. What water lifts weighs less, beside the base and below it; between the base
 * and one breadth below it the weight rises in proportion (as textbooks have it, such as Das).
 *
 * @param unitWeight above the water (N/m³), positive
 * @param saturated unit weight below it (N/m³), above that of water
 * @param depth of the water below the surface (m), not negative
 */
public record GroundWater(double unitWeight, double saturated, double depth) {

    /** Unit weight of water, 62.43 pcf (N/m³). */
    public static final double WATER = 9810;

    public GroundWater {
        Admissible.positive(unitWeight, "unit weight");
        Admissible.notNegative(depth, "depth of water");
        if (!(saturated > WATER)) {
            throw new IllegalArgumentException("saturated ground is heavier than water");
        }
    }

    /** Effective pressure (Pa) beside a base at a depth (m). */
    public double overburden(double founding) {
        double dry = Math.min(founding, depth);
        return unitWeight * dry + buoyant() * (founding - dry);
    }

    /** Effective unit weight (N/m³) that counts below a base of a breadth (m) at a depth (m). */
    public double below(double founding, double breadth) {
        double share = Math.max(0, Math.min(1, (depth - founding) / breadth));
        return buoyant() + share * (unitWeight - buoyant());
    }

    private double buoyant() {
        return saturated - WATER;
    }
}
