package dev.underprop.engine.section;

/**
 * A rectangle standing on edge.
 *
 * @param breadth horizontal size (m), positive
 * @param depth vertical size (m), positive
 */
public record RectangularSection(double breadth, double depth) {

    public RectangularSection {
        if (!(breadth > 0) || !(depth > 0) || Double.isInfinite(breadth) || Double.isInfinite(depth)) {
            throw new IllegalArgumentException("breadth and depth must be positive and finite");
        }
    }

    /** Area (m²). */
    public double area() {
        return breadth * depth;
    }

    /** Section modulus about the horizontal axis (m³). */
    public double modulus() {
        return breadth * depth * depth / 6;
    }

    /** Second moment of area about the horizontal axis (m⁴). */
    public double inertia() {
        return breadth * depth * depth * depth / 12;
    }
}
