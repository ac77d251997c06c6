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
    private static final double MOST_QUICK = 1e14;
    private static final long UNSURE = -1;
    /** The scaled value is off by less than 10^9 * 2^-53 = 1.2e-7; nearer to a tie than this the slow way decides. */
    private static final double TIE = 1e-6;

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
        StringBuilder out = new StringBuilder();
        nine(value, out);
        return out.toString();
    }

    /** Appends the same text. */
    public static void nine(double value, StringBuilder out) {
        double size = size(value);
        if (value < 0) {
            out.append('-');
        }
        long digits = size < LEAST_LONG ? quick(size, DIGITS) : UNSURE;
        if (digits < 0) {
            out.append(size == 0 ? "0" : exact(size));
        } else {
            plain(digits, places(size, DIGITS), out);
        }
    }

    /**
     * The number that is read back from what {@link #nine} writes.
     *
     * @throws IllegalArgumentException when the number is NaN or infinite
     */
    public static double written(double value) {
        double size = size(value);
        long digits = size < LEAST_LONG ? quick(size, DIGITS) : UNSURE;
        if (digits < 0) {
            return Double.parseDouble(nine(value));
        }
        // Both are whole numbers below 2^53, so that the one rounding is that of the decimal number.
        double written = digits / POWERS[places(size, DIGITS)];
        return value < 0 ? -written : written;
    }

    /**
     * A number for people: a few significant digits, half to even on the exact value, never with an exponent.
     *
     * @param value the number, finite
     * @param digits how many, at most nine
     */
    public static String plain(double value, int digits) {
        double size = size(value);
        long kept = quick(size, digits);
        if (kept < 0) {
            BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
            return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
        }
        StringBuilder out = new StringBuilder();
        if (value < 0) {
            out.append('-');
        }
        plain(kept, places(size, digits), out);
        return out.toString();
    }

    private static double size(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("Not a finite number: " + value);
        }
        return Math.abs(value);
    }

    /**
     * Scales to a whole number of so many digits in one rounding, which is safe unless that falls near a tie; {@link #UNSURE} where it
     * does, or where the number is too small or too great for it.
     */
    private static long quick(double size, int digits) {
        if (size < LEAST_PLAIN || size >= MOST_QUICK) {
            return UNSURE;
        }
        int places = places(size, digits);
        double scaled = places < 0 ? size / POWERS[-places] : size * POWERS[places];
        long whole = (long) scaled;
        double rest = scaled - whole;
        long rounded = rest > 0.5 ? whole + 1 : whole;
        boolean unsure = Math.abs(rest - 0.5) < TIE || rounded >= (long) POWERS[digits];
        return unsure ? UNSURE : rounded;
    }

    /** Places after the point so that so many digits are kept; below zero where digits before the point are not. */
    private static int places(double size, int digits) {
        int places = digits - 1;
        while (size >= POWERS[digits - places]) {
            places--;
        }
        if (size >= 1) {
            return places;
        }
        while (size * POWERS[places] < POWERS[digits - 1]) {
            places++;
        }
        return places;
    }

    private static void plain(long digits, int places, StringBuilder out) {
        if (places < 0) {
            out.append(digits * (long) POWERS[-places]);
            return;
        }
        long kept = digits;
        int after = places;
        while (after > 0 && kept % 10 == 0) {
            kept /= 10;
            after--;
        }
        long before = kept / (long) POWERS[after];
        out.append(before);
        if (after > 0) {
            out.append('.');
            long rest = kept - before * (long) POWERS[after];
            for (long power = (long) POWERS[after - 1]; power > rest && power > 1; power /= 10) {
                out.append('0');
            }
            out.append(rest);
        }
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
