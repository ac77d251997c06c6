package dev.underprop.app.report;

/** Puts words on lines of at most a hundred characters, with an indent that hangs. */
final class Lines {
    private static final int WIDTH = 100;

    private Lines() {}

    /**
     * Words on lines.
     *
     * @param first what the first line begins with
     * @param indent spaces that every further line begins with
     * @param words the words, separated by blanks
     * @return the lines, each ended
     */
    static String wrapped(String first, int indent, String words) {
        StringBuilder out = new StringBuilder(first);
        int column = first.length();
        boolean begun = false;
        for (String word : visible(words).strip().split(" +", -1)) {
            if (begun && column + 1 + word.length() > WIDTH) {
                out.append('\n').append(" ".repeat(indent));
                column = indent;
            } else if (begun) {
                out.append(' ');
                column++;
            }
            out.append(word);
            column += word.length();
            begun = true;
        }
        return out.append('\n').toString();
    }

    /** Text from outside with nothing in it that a terminal would obey. */
    static String visible(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(point -> {
            int type = Character.getType(point);
            boolean obeyed = type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE;
            out.appendCodePoint(obeyed ? '?' : point);
        });
        return out.toString();
    }
}
