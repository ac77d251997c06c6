package dev.underprop.wire.quantity;

import dev.underprop.wire.fault.Messages;
import java.math.BigDecimal;

/** Reads the unsigned number of a quantity: a decimal, a fraction, or a whole number with a fraction. */
final class NumberScanner {
    /** Exponents with more digits than this are out of any range. */
    private static final int EXPONENT_DIGITS = 4;

    private final String text;
    private final Dimension expected;

    NumberScanner(String text, Dimension expected) {
        this.text = text;
        this.expected = expected;
    }

    /**
     * A number and where it ends.
     *
     * @param value the number
     * @param whole true when written as digits alone
     * @param end index of the first character after it
     */
    record Found(Exact value, boolean whole, int end) {}

    /**
     * Reads the number that starts at an index.
     *
     * @param start where it starts
     * @param exponent whether an exponent is read
     */
    Found scan(int start, boolean exponent) {
        int end = digits(start);
        if (is(end, '.')) {
            return decimal(start, end + 1, exponent);
        }
        if (end == start) {
            throw isSign(start) ? refusal(Messages.SIGN_INSIDE) : malformed();
        }
        if (is(end, '/')) {
            return fraction(start, end);
        }
        int second = secondPart(end);
        if (second > end) {
            return mixed(start, end, second);
        }
        return exponent ? withExponent(start, end) : whole(start, end);
    }

    private Found decimal(int start, int afterPoint, boolean exponent) {
        int end = digits(afterPoint);
        if (end == afterPoint) {
            throw malformed();
        }
        return exponent ? withExponent(start, end) : new Found(exact(start, end), false, end);
    }

    private Found whole(int start, int end) {
        return new Found(exact(start, end), true, end);
    }

    private Found withExponent(int start, int end) {
        if (!is(end, 'e') && !is(end, 'E')) {
            return new Found(exact(start, end), !text.substring(start, end).contains("."), end);
        }
        int first = isSign(end + 1) ? end + 2 : end + 1;
        int last = digits(first);
        if (last == first) {
            throw malformed();
        }
        if (last - first > EXPONENT_DIGITS) {
            throw refusal(Messages.QUANTITY_OUT_OF_RANGE);
        }
        return new Found(exact(start, last), false, last);
    }

    private Found fraction(int start, int slash) {
        int end = digits(slash + 1);
        if (end == slash + 1) {
            throw isSign(slash + 1) ? refusal(Messages.SIGN_INSIDE) : malformed();
        }
        BigDecimal bottom = new BigDecimal(text.substring(slash + 1, end));
        if (bottom.signum() == 0) {
            throw refusal(Messages.FRACTION_OF_ZERO);
        }
        return new Found(new Exact(new BigDecimal(text.substring(start, slash)), bottom), false, end);
    }

    private Found mixed(int start, int end, int second) {
        Found part = fraction(second, digits(second));
        if (part.value().atLeast(1)) {
            throw refusal(Messages.FRACTION_NOT_BELOW_ONE);
        }
        return new Found(part.value().plus(new BigDecimal(text.substring(start, end))), false, part.end());
    }

    /** Where the fraction after a whole number starts, or the given end when none follows. */
    private int secondPart(int end) {
        int from = end;
        if (is(end, '-')) {
            from = end + 1;
        } else {
            while (from < text.length() && Characters.blank(text.charAt(from))) {
                from++;
            }
        }
        int slash = digits(from);
        return from > end && slash > from && is(slash, '/') ? from : end;
    }

    private Exact exact(int start, int end) {
        return Exact.of(new BigDecimal(text.substring(start, end)));
    }

    private int digits(int from) {
        int end = from;
        while (end < text.length() && Characters.digit(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private boolean is(int index, char wanted) {
        return index < text.length() && text.charAt(index) == wanted;
    }

    private boolean isSign(int index) {
        return is(index, '-') || is(index, '+');
    }

    private Refusal malformed() {
        return refusal(Messages.QUANTITY_MALFORMED, expected.example());
    }

    private Refusal refusal(Messages message, String... arguments) {
        return new Refusal(message.fault(text, arguments));
    }
}
