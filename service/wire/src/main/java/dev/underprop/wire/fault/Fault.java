package dev.underprop.wire.fault;

import java.util.Locale;

/**
 * One fault found in a request. Absent parts are the empty string, an unknown place is line 0 and column 0.
 *
 * @param pointer JSON pointer (RFC 6901) to the faulty value, empty for the whole document
 * @param code stable name of the kind of fault, kebab-case
 * @param detail what is wrong, one sentence
 * @param got what was found, shortened
 * @param limit the limit that was passed, with its unit
 * @param remedy what to do about it, one sentence
 * @param line line of the place, 1-based, 0 when not known
 * @param column column of the place in characters, 1-based, 0 when not known
 */
public record Fault(
        String pointer, String code, String detail, String got, String limit, String remedy, int line, int column) {

    private static final int LONGEST_SHOWN = 80;

    /**
     * A fault whose place is not known yet.
     *
     * @param code stable kebab-case name
     * @param detail what is wrong
     * @param remedy what to do about it, or empty
     */
    public static Fault of(String code, String detail, String remedy) {
        return new Fault("", code, detail, "", "", remedy, 0, 0);
    }

    /** The same fault at another pointer. */
    public Fault withPointer(String newPointer) {
        return new Fault(newPointer, code, detail, got, limit, remedy, line, column);
    }

    /** The same fault with what was found, shortened and with control characters made visible. */
    public Fault withGot(String newGot) {
        return new Fault(pointer, code, detail, shown(newGot), limit, remedy, line, column);
    }

    /** The same fault with the limit that was passed. */
    public Fault withLimit(String newLimit) {
        return new Fault(pointer, code, detail, got, newLimit, remedy, line, column);
    }

    /** The same fault with another remedy. */
    public Fault withRemedy(String newRemedy) {
        return new Fault(pointer, code, detail, got, limit, newRemedy, line, column);
    }

    /** The same fault at a line and column, both 1-based. */
    public Fault at(int newLine, int newColumn) {
        return new Fault(pointer, code, detail, got, limit, remedy, newLine, newColumn);
    }

    /** True when line and column are known. */
    public boolean placed() {
        return line > 0;
    }

    /**
     * Text from a request as it may be repeated in an answer: at most 80 characters, nothing that a terminal or a
     * page would obey.
     */
    public static String shown(String text) {
        StringBuilder out = new StringBuilder();
        int at = 0;
        while (at < text.length() && out.length() < LONGEST_SHOWN) {
            int point = text.codePointAt(at);
            out.append(visible(point));
            at += Character.charCount(point);
        }
        return at < text.length() ? out.append("...").toString() : out.toString();
    }

    private static String visible(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.UNASSIGNED,
                    Character.PRIVATE_USE -> "<U+" + hex(point) + ">";
            default -> Character.toString(point);
        };
    }

    private static String hex(int point) {
        String digits = Integer.toHexString(point).toUpperCase(Locale.ROOT);
        return "0".repeat(Math.max(0, 4 - digits.length())) + digits;
    }
}
