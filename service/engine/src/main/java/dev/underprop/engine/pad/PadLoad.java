package dev.underprop.engine.pad;

/**
 * What a post brings on its pad.
 *
 * @param greatest load in the allowable stress combinations (N), not negative
 * @param factored greatest load in the strength combinations (N), not negative, NaN where they were not solved
 * @param lean sideways force over load, not negative
 */
public record PadLoad(double greatest, double factored, double lean) {

    public PadLoad {
        if (!(greatest >= 0) || factored < 0 || !(lean >= 0)) {
            throw new IllegalArgumentException("loads of a pad are not negative");
        }
    }
}
