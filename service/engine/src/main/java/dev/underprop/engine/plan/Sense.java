package dev.underprop.engine.plan;

/** Guards of the records of this package. */
final class Sense {

    /** Slack for sums of converted lengths (m): far below any tape, far above rounding. */
    static final double ROUNDING = 1e-9;

    private Sense() {}

    static void finite(double value, String what) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be finite");
        }
    }

    static void positive(double value, String what) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be positive and finite");
        }
    }

    /** NaN stands for what is not stated. */
    static void positiveOrNaN(double value, String what) {
        if (!Double.isNaN(value)) {
            positive(value, what);
        }
    }

    static void notNegative(double value, String what) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must not be negative, and finite");
        }
    }

    /** A stiffness: positive, infinite when rigid. */
    static void stiffness(double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException("stiffness must be positive, or infinite for rigid");
        }
    }
}
