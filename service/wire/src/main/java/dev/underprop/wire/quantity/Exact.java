package dev.underprop.wire.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A number as written: top / bottom, both exact.
 *
 * @param top numerator
 * @param bottom denominator, a whole number above zero
 */
record Exact(BigDecimal top, BigDecimal bottom) {
    /** Below this every whole number is a double. */
    private static final long WHOLE_DOUBLES = 1L << 53;
    /** The greatest power of ten worth trying: 10^15 is below 2^53. */
    private static final int GREATEST_POWER = 15;
    /** Far more digits than decide the rounding of a double. */
    private static final MathContext WIDE = new MathContext(40);

    static Exact of(BigDecimal value) {
        return new Exact(value, BigDecimal.ONE);
    }

    boolean atLeast(long limit) {
        return top.compareTo(bottom.multiply(BigDecimal.valueOf(limit))) >= 0;
    }

    Exact negated() {
        return new Exact(top.negate(), bottom);
    }

    Exact plus(BigDecimal whole) {
        return new Exact(top.add(whole.multiply(bottom)), bottom);
    }

    /**
     * The double nearest to this number of the given unit, in SI: {@code 10 ft} and {@code 120 in} are the same double,
     * which a chain of roundings would not promise.
     */
    double in(Unit unit) {
        BigDecimal numerator = top.multiply(unit.top());
        BigDecimal denominator = bottom.multiply(unit.bottom());
        int scale = numerator.scale();
        if (scale >= 0 && scale <= GREATEST_POWER) {
            BigDecimal wide = numerator.scaleByPowerOfTen(scale);
            BigDecimal deep = denominator.scaleByPowerOfTen(scale);
            if (whole(wide) && whole(deep)) {
                return wide.doubleValue() / deep.doubleValue();
            }
        }
        return numerator.divide(denominator, WIDE).doubleValue();
    }

    private static boolean whole(BigDecimal value) {
        return value.abs().compareTo(BigDecimal.valueOf(WHOLE_DOUBLES)) <= 0;
    }
}
