package dev.underprop.engine.section;

/**
 * Equal boards standing on edge side by side and sharing the load equally. Fastening that makes them act as one wide
 * rectangle against sideways buckling is for the caller to judge: {@link #ply} is there for judging them singly.
 *
 * @param ply one board
 * @param plies number of boards, at least 1
 */
public record BuiltUpSection(RectangularSection ply, int plies) {

    public BuiltUpSection {
        if (plies < 1) {
            throw new IllegalArgumentException("a built-up section has at least one ply, got " + plies);
        }
    }

    /** Width over all plies (m). */
    public double breadth() {
        return plies * ply.breadth();
    }

    /** Depth (m). */
    public double depth() {
        return ply.depth();
    }

    /** Area of all plies (m²). */
    public double area() {
        return plies * ply.area();
    }

    /** Section modulus of all plies about the horizontal axis (m³). */
    public double sectionModulus() {
        return plies * ply.sectionModulus();
    }

    /** Second moment of area of all plies about the horizontal axis (m⁴). */
    public double inertia() {
        return plies * ply.inertia();
    }
}
