package dev.underprop.wire.tree;

import dev.underprop.wire.fault.Fault;

/** Characters that a text of a document may not hold, however they are written. */
final class TextCheck {
    private TextCheck() {}

    /**
     * The first control character other than tab and line end, or lone half of a surrogate pair, made visible; empty
     * when there is none. The first kind could command a terminal, the second has no UTF-8 form to answer in.
     */
    static String wrongCharacter(String text) {
        int at = 0;
        while (at < text.length()) {
            int point = text.codePointAt(at);
            if (wrong(point)) {
                return Fault.shown(Character.toString(point));
            }
            at += Character.charCount(point);
        }
        return "";
    }

    private static boolean wrong(int point) {
        boolean control = point < ' ' && point != '\t' && point != '\n' && point != '\r';
        boolean upperControl = point >= 0x7F && point <= 0x9F;
        boolean half = point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
        return control || upperControl || half;
    }
}
