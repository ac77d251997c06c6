package dev.underprop.wire.tree;

import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.NumericNode;
import dev.underprop.wire.fault.Messages;

/**
 * Numbers of a document as nodes. Whole numbers are ints or longs however they are written ({@code 3}, {@code 3.0},
 * {@code 3e0}), as JSON Schema counts them, all others finite doubles. Beyond 2^53 - 1 a whole number written as such is
 * refused (RFC 7493, section 2.2), because two of them would be the same double; so is what overflows or vanishes.
 */
final class NumberNodes {
    private static final double GREATEST_WHOLE = 9_007_199_254_740_991.0;

    private NumberNodes() {}

    /**
     * The node of a number.
     *
     * @param text a decimal number, perhaps with a sign, a point and an exponent
     * @throws Stopped with a fault that has no place yet
     */
    static NumericNode of(String text) {
        double value = Double.parseDouble(text);
        boolean tooLarge = Double.isInfinite(value) || (whole(text) && Math.abs(value) > GREATEST_WHOLE);
        if (tooLarge || (value == 0 && !zero(text))) {
            throw new Stopped(Messages.NUMBER_OUT_OF_RANGE.fault(text));
        }
        if (value != Math.rint(value) || Math.abs(value) > GREATEST_WHOLE) {
            return DoubleNode.valueOf(value);
        }
        long digits = (long) value;
        return (int) digits == digits ? IntNode.valueOf((int) digits) : LongNode.valueOf(digits);
    }

    private static boolean whole(String text) {
        return text.chars().noneMatch(c -> c == '.' || c == 'e' || c == 'E');
    }

    private static boolean zero(String text) {
        return text.chars().takeWhile(c -> c != 'e' && c != 'E').noneMatch(c -> c >= '1' && c <= '9');
    }
}
