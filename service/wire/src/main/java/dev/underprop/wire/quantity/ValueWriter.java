package dev.underprop.wire.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The one writer of numbers in results.
 *
 * <p>At most nine significant digits, half to even on the exact value of the double, no trailing zeros. Plain digits
 * when what is written lies from 10^-6 up to, not including, 10^9; with an exponent outside, as in {@code 1.5e-7}. Zero of either sign is
 * {@code 0}. What is written is also a number in JSON. {@link Double#toString} will not do: its digits differ between
 * JDK 17 and JDK 19.
 */
public final class ValueWriter {
    private static final int DIGITS = 9;
    private static final MathContext NINE = new MathContext(DIGITS, RoundingMode.HALF_EVEN);
    private static final double LEAST_PLAIN = 1e-6;
    private static final double LEAST_LONG = 1e9;
    /** The scaled value is off by less than 10^9 * 2^-53 = 1.2e-7; nearer to a tie than this the slow way decides. */
    private static final double TIE = 1e-6;

    private static final long TEN_DIGITS = 1_000_000_000;

    private static final double[] POWERS = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    private ValueWriter() {}

    /**
     * Writes a number.
     *
     * @param value the number, finite
     * @return its text, at most nine significant digits
     * @throws IllegalArgumentException when the number is NaN or infinite
     */
    public static String nine(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("Not a finite number: " + value);
        }
        double size = Math.abs(value);
        if (size == 0) {
            return "0";
        }
        String text = size >= LEAST_PLAIN && size < LEAST_LONG ? quick(size) : exact(size);
        return value < 0 ? '-' + text : text;
    }

    /** Scales to a nine-digit whole number in one rounding, which is safe unless that falls near a tie. */
    private static String quick(double size) {
        int places = places(size);
        double scaled = size * POWERS[places];
        long whole = (long) scaled;
        double rest = scaled - whole;
        long digits = rest > 0.5 ? whole + 1 : whole;
        boolean unsure = Math.abs(rest - 0.5) < TIE || digits == TEN_DIGITS;
        return unsure ? exact(size) : plain(digits, places);
    }

    /** Places after the point so that nine digits are kept. */
    private static int places(double size) {
        int places = DIGITS - 1;
        while (places > 0 && size >= POWERS[DIGITS - places]) {
            places--;
        }
        if (size >= 1) {
            return places;
        }
        while (size * POWERS[places] < POWERS[DIGITS - 1]) {
            places++;
        }
        return places;
    }

    private static String plain(long digits, int places) {
        long kept = digits;
        int after = places;
        while (after > 0 && kept % 10 == 0) {
            kept /= 10;
            after--;
        }
        String text = Long.toString(kept);
        if (after == 0) {
            return text;
        }
        String padded = text.length() > after ? text : "0".repeat(after + 1 - text.length()) + text;
        int point = padded.length() - after;
        return padded.substring(0, point) + '.' + padded.substring(point);
    }

    /** The definition; the quick way above must agree with it. */
    static String exact(double size) {
        BigDecimal rounded = new BigDecimal(size).round(NINE).stripTrailingZeros();
        int exponent = rounded.precision() - rounded.scale() - 1;
        if (exponent >= -6 && exponent < DIGITS) {
            return rounded.toPlainString();
        }
        String digits = rounded.unscaledValue().toString();
        String mantissa = digits.length() == 1 ? digits : digits.charAt(0) + "." + digits.substring(1);
        return mantissa + 'e' + exponent;
    }
}
