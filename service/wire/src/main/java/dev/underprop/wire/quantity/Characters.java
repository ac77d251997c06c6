package dev.underprop.wire.quantity;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;

/**
 * The characters of a quantity. Typographic primes, fractions and dashes are refused rather than guessed at: they come
 * from programs that replace what was typed, and not always by what was meant.
 */
final class Characters {
    private static final String FEET = "\u2032\u2018\u2019\u00B4`";
    private static final String INCHES = "\u2033\u201C\u201D";
    private static final String DASHES = "\u2212\u2010\u2011\u2012\u2013\u2014";

    private Characters() {}

    static void screen(String text) {
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int point = text.codePointAt(i);
            if (point == ',') {
                throw new Refusal(Messages.DECIMAL_COMMA.fault(text));
            }
            if (!used(point)) {
                String character = Fault.shown(Character.toString(point));
                throw new Refusal(Messages.QUANTITY_CHARACTER.fault(text, character, remedy(point)));
            }
        }
    }

    static boolean digit(int point) {
        return point >= '0' && point <= '9';
    }

    static boolean letter(int point) {
        return (point >= 'a' && point <= 'z') || (point >= 'A' && point <= 'Z');
    }

    static boolean blank(int point) {
        return point == ' ' || point == '\t';
    }

    private static boolean used(int point) {
        return digit(point) || letter(point) || blank(point) || "+-./'\"".indexOf(point) >= 0;
    }

    private static String remedy(int point) {
        if (FEET.indexOf(point) >= 0) {
            return "Write feet as ft or with a straight apostrophe (').";
        }
        if (INCHES.indexOf(point) >= 0) {
            return "Write inches as in or with a straight quotation mark (\").";
        }
        if (DASHES.indexOf(point) >= 0) {
            return "Write a plain hyphen (-).";
        }
        return switch (Character.getType(point)) {
            case Character.OTHER_NUMBER -> "Write fractions like 1/2, and powers like m2.";
            case Character.DECIMAL_DIGIT_NUMBER -> "Write the digits 0 to 9.";
            case Character.SPACE_SEPARATOR -> "Write an ordinary blank.";
            default -> other(point);
        };
    }

    private static String other(int point) {
        return switch (point) {
            case 0x2044 -> "Write fractions with a plain slash (/).";
            case 0xB0 -> "Write degrees as deg.";
            case '#' -> "Write pounds as lb.";
            case '^' -> "Write powers like m2.";
            default -> "Write digits, a point, a slash, a sign and a unit.";
        };
    }
}
