package dev.underprop.engine.pad;

import dev.underprop.engine.plan.Limits;

/**
 * What a post brings on its pad.
 *
 * @param greatest load in the allowable stress combinations (N), not negative
 * @param factored greatest load in the strength combinations (N), not negative, NaN where they were not solved
 * @param lean sideways force over load, not negative
 * @param foot how far off the middle of its foot the load may act (m), not negative; the type of the post may say more
 */
public record PadLoad(double greatest, double factored, double lean, double foot) {

    public PadLoad {
        if (!(greatest >= 0) || factored < 0 || !(lean >= 0) || !(foot >= 0)) {
            throw new IllegalArgumentException("loads of a pad are not negative");
        }
    }

    /** Of a post whose type says how far off the middle its load acts. */
    public PadLoad(double greatest, double factored, double lean) {
        this(greatest, factored, lean, 0);
    }

    /** Least sideways force of a post over its load: BS 5975 practice, from memory. */
    public static final double NOTIONAL = 0.025;

    /** What a post that leans pushes sideways on its pad over its load; known sideways forces go into what holds the floor. */
    public static double lean(Limits.Plumb plumb) {
        return Math.max(NOTIONAL, StrictMath.tan(plumb.lean()));
    }

    /** Sideways force over upright force under the pad. @param total load with the pad's weight (N) */
    double tilt(double total) {
        return greatest > 0 ? lean * greatest / total : 0;
    }
}
