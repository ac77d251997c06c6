package dev.underprop.wire.tree;

/**
 * A place in a document.
 *
 * @param line 1-based; lines end at LF, CR or CR LF
 * @param column 1-based, in characters (code points), a tab counts as one
 */
public record Place(int line, int column) {
    /** The place just after a text that starts a document. */
    static Place of(CharSequence before) {
        int line = 1;
        int start = 0;
        for (int i = 0; i < before.length(); i++) {
            char c = before.charAt(i);
            boolean pair = c == '\r' && i + 1 < before.length() && before.charAt(i + 1) == '\n';
            if (c == '\n' || (c == '\r' && !pair)) {
                line++;
                start = i + 1;
            }
        }
        return new Place(line, 1 + Character.codePointCount(before, start, before.length()));
    }
}
