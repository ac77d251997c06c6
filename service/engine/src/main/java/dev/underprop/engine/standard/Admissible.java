package dev.underprop.engine.standard;

/** Guards at the door of records and clauses: what is not a sensible number goes no further. */
public final class Admissible {

    private Admissible() {}

    /**
     * Lets a positive finite number through.
     *
     * @param what names the number in the message
     * @throws IllegalArgumentException for zero, a negative number, infinity or NaN
     */
    public static double positive(double value, String what) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be positive and finite, got " + value);
        }
        return value;
    }

    /**
     * Lets zero or a positive finite number through.
     *
     * @param what names the number in the message
     * @throws IllegalArgumentException for a negative number, infinity or NaN
     */
    public static double notNegative(double value, String what) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be finite and not negative, got " + value);
        }
        return value;
    }

    /**
     * Lets a finite number through.
     *
     * @param what names the number in the message
     * @throws IllegalArgumentException for infinity or NaN
     */
    public static double finite(double value, String what) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be finite, got " + value);
        }
        return value;
    }
}
