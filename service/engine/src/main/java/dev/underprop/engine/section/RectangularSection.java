package dev.underprop.engine.section;

import dev.underprop.engine.standard.Admissible;

/**
 * A rectangle standing on edge.
 *
 * @param breadth horizontal size (m), positive
 * @param depth vertical size (m), positive
 */
public record RectangularSection(double breadth, double depth) {

    public RectangularSection {
        Admissible.positive(breadth, "breadth");
        Admissible.positive(depth, "depth");
    }

    /** Area (m²). */
    public double area() {
        return breadth * depth;
    }

    /** Section modulus about the horizontal axis (m³). */
    public double sectionModulus() {
        return breadth * depth * depth / 6;
    }

    /** Second moment of area about the horizontal axis (m⁴). */
    public double inertia() {
        return breadth * depth * depth * depth / 12;
    }
}
