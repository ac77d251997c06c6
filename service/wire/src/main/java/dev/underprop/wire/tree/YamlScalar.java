package dev.underprop.wire.tree;

import java.util.regex.Pattern;

/**
 * What an unquoted YAML value is, by the core schema of YAML 1.2.2 (chapter 10.3): true, false, null and decimal numbers;
 * all else is text. So {@code yes}, {@code no}, {@code on}, {@code off}, {@code NaN}, dates and {@code 12:30} are text.
 *
 * <p>Deviation: {@code 0123}, {@code 0o17}, {@code 0x1F}, {@code 0b101} and {@code 1_000} are refused, since readers of
 * YAML 1.1 and 1.2 take them for different numbers, or one for a number and the other for text.
 */
enum YamlScalar {
    TEXT(Token.TEXT),
    NUMBER(Token.NUMBER),
    TRUE(Token.TRUE),
    FALSE(Token.FALSE),
    NULL(Token.NULL),
    NOT_FINITE(Token.TEXT),
    AMBIGUOUS(Token.TEXT);

    private static final Pattern DECIMAL =
            Pattern.compile("[-+]?(\\.[0-9]+|(0|[1-9][0-9]*)(\\.[0-9]*)?)([eE][-+]?[0-9]+)?");
    private static final Pattern INFINITE = Pattern.compile("[-+]?\\.(inf|Inf|INF)|\\.(nan|NaN|NAN)");
    private static final Pattern UNCLEAR = Pattern.compile("[-+]?(0[0-9]+(\\.[0-9]*)?([eE][-+]?[0-9]+)?|0o?[0-7_]+"
            + "|0x[0-9a-fA-F_]+|0b[01_]+|[0-9][0-9_]*_[0-9_]*(\\.[0-9_]*)?)");

    private final Token token;

    YamlScalar(Token token) {
        this.token = token;
    }

    Token token() {
        return token;
    }

    static YamlScalar of(String plain) {
        return switch (plain) {
            case "", "~", "null", "Null", "NULL" -> NULL;
            case "true", "True", "TRUE" -> TRUE;
            case "false", "False", "FALSE" -> FALSE;
            default -> numeric(plain);
        };
    }

    private static YamlScalar numeric(String plain) {
        if ("+-.0123456789".indexOf(plain.charAt(0)) < 0) {
            return TEXT;
        }
        if (DECIMAL.matcher(plain).matches()) {
            return NUMBER;
        }
        if (INFINITE.matcher(plain).matches()) {
            return NOT_FINITE;
        }
        return UNCLEAR.matcher(plain).matches() ? AMBIGUOUS : TEXT;
    }
}
