package dev.underprop.engine.statics;

/**
 * A running sum kept as two doubles, so that about 30 digits survive. A carrier with a joist 1 mm from a post has
 * stiffnesses 1e11 times those of the whole beam; in one double their rounding would stand as a false support.
 *
 * <p>Method: T. J. Dekker, Numerische Mathematik 18, 1971, with the product error by fused multiply-add (from memory).
 */
final class Twofold {

    private double hi;
    private double lo;

    Twofold set(double high, double low) {
        hi = high;
        lo = low;
        return this;
    }

    double hi() {
        return hi;
    }

    double lo() {
        return lo;
    }

    Twofold add(double high, double low) {
        double sum = hi + high;
        double part = sum - hi;
        double error = (hi - (sum - part)) + (high - part);
        return normalise(sum, lo + low + error);
    }

    /** This minus x times y. */
    Twofold subtractProduct(double xHigh, double xLow, double yHigh, double yLow) {
        double product = xHigh * yHigh;
        double rest = StrictMath.fma(xHigh, yHigh, -product) + (xHigh * yLow + xLow * yHigh);
        return add(-product, -rest);
    }

    Twofold divide(double high, double low) {
        double first = hi / high;
        subtractProduct(first, 0, high, low);
        double second = hi / high;
        subtractProduct(second, 0, high, low);
        double third = hi / high;
        return set(first, 0).add(second, 0).add(third, 0);
    }

    Twofold multiply(double high, double low) {
        double h = hi;
        double l = lo;
        return set(0, 0).subtractProduct(-h, -l, high, low);
    }

    private Twofold normalise(double high, double low) {
        hi = high + low;
        lo = low - (hi - high);
        return this;
    }
}
