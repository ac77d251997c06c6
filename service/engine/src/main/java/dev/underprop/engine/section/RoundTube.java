package dev.underprop.engine.section;

import dev.underprop.engine.standard.Admissible;

/**
 * A round tube.
 *
 * @param diameter outside (m), positive
 * @param wall thickness (m), positive, at most half of the diameter
 */
public record RoundTube(double diameter, double wall) {

    public RoundTube {
        Admissible.positive(diameter, "diameter");
        Admissible.positive(wall, "wall");
        if (wall > diameter / 2) {
            throw new IllegalArgumentException("a wall is at most half of the diameter");
        }
    }

    /** Inside diameter (m). */
    public double inside() {
        return diameter - 2 * wall;
    }

    /** Area of the wall (m²). */
    public double area() {
        return Math.PI / 4 * (diameter * diameter - inside() * inside());
    }

    /** Radius of gyration (m). */
    public double radius() {
        return Math.sqrt(diameter * diameter + inside() * inside()) / 4;
    }

    /** Second moment of area (m⁴). */
    public double inertia() {
        return area() * radius() * radius();
    }

    /** Plastic section modulus (m³). */
    public double plasticModulus() {
        return (diameter * diameter * diameter - inside() * inside() * inside()) / 6;
    }
}
