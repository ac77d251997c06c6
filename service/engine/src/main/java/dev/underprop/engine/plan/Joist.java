package dev.underprop.engine.plan;

/**
 * A joist.
 *
 * @param name as the plan calls it
 * @param x position along the shores (m)
 * @param start y of its near end (m)
 * @param length (m), positive
 * @param member section and timber
 */
public record Joist(String name, double x, double start, double length, Member member) {

    public Joist {
        Sense.finite(x, "x");
        Sense.finite(start, "start");
        Sense.positive(length, "length");
    }

    /** y of its far end (m). */
    public double end() {
        return start + length;
    }

    /** Whether the joist passes over a line along x at y (m), its ends included. */
    public boolean crosses(double y) {
        return y >= start - Sense.ROUNDING && y <= end() + Sense.ROUNDING;
    }
}
