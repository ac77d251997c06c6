package dev.underprop.wire.quantity;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.math.BigDecimal;
import java.util.Locale;

/** Walks over one quantity, from left to right, by the grammar in {@link Quantity}. */
final class QuantityScanner {
    private static final BigDecimal TWELVE = BigDecimal.valueOf(12);

    private final String text;
    private final Dimension expected;
    private final NumberScanner numbers;
    private int at;

    QuantityScanner(String text, Dimension expected) {
        this.text = text;
        this.expected = expected;
        this.numbers = new NumberScanner(text, expected);
    }

    Measure scan() {
        boolean negative = text.charAt(0) == '-';
        if (negative || text.charAt(0) == '+') {
            at++;
        }
        refuseNotFinite();
        Measure measure = unsigned();
        return negative ? measure.negated() : measure;
    }

    private Measure unsigned() {
        NumberScanner.Found number = number(true);
        String symbol = symbol();
        if (at == text.length()) {
            return new Measure(number.value(), unit(symbol));
        }
        if (!symbol.equals("ft") && !symbol.equals("'")) {
            throw leftover(symbol);
        }
        return feetAndInches(number);
    }

    private Measure feetAndInches(NumberScanner.Found feet) {
        separator();
        int start = at;
        NumberScanner.Found inches = number(false);
        String written = text.substring(start, at);
        String symbol = symbol();
        if (at < text.length() || (!symbol.equals("in") && !symbol.equals("\""))) {
            throw leftover(symbol);
        }
        unit(symbol);
        if (!feet.whole()) {
            throw refusal(Messages.FEET_NOT_WHOLE);
        }
        if (inches.value().atLeast(12)) {
            throw refusal(Messages.INCHES_NOT_BELOW_12, Carry.over(feet.value().top(), inches.value(), written));
        }
        return new Measure(inches.value().plus(feet.value().top().multiply(TWELVE)), Unit.INCH);
    }

    /** Between feet and inches: nothing, blanks, or one hyphen that touches both. */
    private void separator() {
        int start = at;
        skipBlanks();
        boolean touching = at == start && at + 1 < text.length() && Characters.digit(text.charAt(at + 1));
        if (peek() == '-' && touching) {
            at++;
        } else if (peek() == '-' || peek() == '+') {
            throw refusal(Messages.SIGN_INSIDE);
        }
    }

    private NumberScanner.Found number(boolean exponent) {
        NumberScanner.Found number = numbers.scan(at, exponent);
        at = number.end();
        return number;
    }

    private String symbol() {
        skipBlanks();
        int start = at;
        if (peek() == '\'' || peek() == '"') {
            at++;
        } else if (Characters.letter(peek())) {
            while (Characters.letter(peek()) || Characters.digit(peek()) || peek() == '/') {
                at++;
            }
        } else if (at == text.length()) {
            throw refusal(Messages.UNIT_MISSING, expected.phrase(), expected.example());
        } else {
            throw unexpected();
        }
        return text.substring(start, at);
    }

    private Unit unit(String symbol) {
        if (!Unit.known(symbol)) {
            throw new Refusal(UnitAdvice.unread(symbol, expected).withGot(text));
        }
        Unit unit = Unit.named(symbol);
        if (!unit.measures(expected)) {
            throw new Refusal(UnitAdvice.wrong(unit, expected).withGot(text));
        }
        return unit;
    }

    /** Something follows a unit after which nothing may follow: the unit itself may be what is wrong. */
    private Refusal leftover(String symbol) {
        unit(symbol);
        return unexpected();
    }

    private Refusal unexpected() {
        skipBlanks();
        boolean sign = peek() == '-' || peek() == '+';
        return sign ? refusal(Messages.SIGN_INSIDE) : refusal(Messages.QUANTITY_MALFORMED, expected.example());
    }

    private void refuseNotFinite() {
        String rest = text.substring(at).toLowerCase(Locale.ROOT);
        for (String word : new String[] {"nan", "infinity", "inf"}) {
            boolean alone = rest.length() == word.length()
                    || (rest.length() > word.length() && !Characters.letter(rest.charAt(word.length())));
            if (rest.startsWith(word) && alone) {
                throw refusal(Messages.QUANTITY_NOT_FINITE);
            }
        }
    }

    private void skipBlanks() {
        while (Characters.blank(peek())) {
            at++;
        }
    }

    private int peek() {
        return at < text.length() ? text.charAt(at) : -1;
    }

    private Refusal refusal(Messages message, String... arguments) {
        Fault fault = message.fault(text, arguments);
        return new Refusal(fault);
    }
}
