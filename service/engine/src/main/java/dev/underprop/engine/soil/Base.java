package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Admissible;

/**
 * A rectangular base.
 *
 * @param breadth B' of the part that bears (m), positive
 * @param length L' of that part (m), not less
 * @param width B of the whole base (m), which depth is measured by; positive
 * @param depth D that depth factors may count (m), 0 where they are left out
 */
public record Base(double breadth, double length, double width, double depth) {

    public Base {
        Admissible.positive(breadth, "breadth");
        Admissible.positive(length, "length");
        Admissible.positive(width, "width");
        Admissible.notNegative(depth, "depth");
        if (length < breadth) {
            throw new IllegalArgumentException("the length of a base is its longer side");
        }
    }

    /** A base loaded in its middle, depth factors left out. */
    public static Base of(double one, double other) {
        double breadth = Math.min(one, other);
        return new Base(breadth, Math.max(one, other), breadth, 0);
    }

    /** B'/L'. */
    double ratio() {
        return breadth / length;
    }

    /** Depth over breadth as Hansen and Vesic count it: the angle where the base lies deeper than it is wide. */
    double embedment() {
        double share = depth / width;
        return share > 1 ? StrictMath.atan(share) : share;
    }
}
