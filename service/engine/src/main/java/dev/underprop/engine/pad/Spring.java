package dev.underprop.engine.pad;

import dev.underprop.engine.standard.Citation;

/**
 * A spring of which only two bounds are known.
 *
 * @param soft least stiffness (N/m), positive
 * @param stiff greatest stiffness (N/m), not less; infinite where no end is known
 * @param name the range in words
 * @param citation where the range stands
 */
public record Spring(double soft, double stiff, String name, Citation citation) {

    public Spring {
        if (!(soft > 0) || Double.isInfinite(soft) || !(stiff >= soft)) {
            throw new IllegalArgumentException("a range of stiffness runs from a positive number to one not less");
        }
    }

    /** Soft bound (N/m) of this spring and another one under the same load, one on the other. */
    public double softOn(Spring other) {
        return series(soft, other.soft);
    }

    /** Stiff bound (N/m) of this spring and another one under the same load, one on the other. */
    public double stiffOn(Spring other) {
        return series(stiff, other.stiff);
    }

    private static double series(double one, double other) {
        return 1 / (1 / one + 1 / other);
    }
}
