package dev.underprop.wire.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Writes a double with as few digits as tell it from every other, in the form of RFC 8785 (section 3.2.2.3): plain from
 * 10^-6 up to 10^21, with an exponent outside. Meant for numbers that stood in a request; results are written by
 * {@link ValueWriter}.
 */
public final class ShortestNumber {
    /** Seventeen digits tell any two doubles apart. */
    private static final int MOST_DIGITS = 17;

    private static final int LEAST_PLAIN = -6;
    private static final int LEAST_LONG = 21;

    private ShortestNumber() {}

    /**
     * The text of a number.
     *
     * @param value the number, finite
     * @throws IllegalArgumentException when the number is NaN or infinite
     */
    public static String of(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("Not a finite number: " + value);
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal shortest = shortest(Math.abs(value)).stripTrailingZeros();
        return (value < 0 ? "-" : "") + text(shortest);
    }

    private static BigDecimal shortest(double size) {
        BigDecimal exact = new BigDecimal(size);
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (rounded.doubleValue() == size) {
                return rounded;
            }
        }
        return exact.round(new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN));
    }

    private static String text(BigDecimal number) {
        int exponent = number.precision() - number.scale() - 1;
        if (exponent >= LEAST_PLAIN && exponent < LEAST_LONG) {
            return number.toPlainString();
        }
        String digits = number.unscaledValue().toString();
        String mantissa = digits.length() == 1 ? digits : digits.charAt(0) + "." + digits.substring(1);
        return mantissa + (exponent < 0 ? "e-" : "e+") + Math.abs(exponent);
    }
}
