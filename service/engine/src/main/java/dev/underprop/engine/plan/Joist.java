package dev.underprop.engine.plan;

/**
 * A joist.
 *
 * @param name as the plan calls it
 * @param x position along the shores (m)
 * @param start y of its near end (m)
 * @param length (m), positive
 * @param member section and timber
 * @param notch whether its ends are cut away from below
 */
public record Joist(String name, double x, double start, double length, Member member, EndNotch notch) {

    /** A joist of whose ends nothing is said. */
    public Joist(String name, double x, double start, double length, Member member) {
        this(name, x, start, length, member, new EndNotch.Unstated());
    }

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
