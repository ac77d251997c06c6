package dev.underprop.app.report;

/** Text from outside as it may stand in XML, HTML or Markdown, where none of it is taken for anything but text. */
final class Markup {
    private Markup() {}

    /** Text between elements; line ends stay. */
    static String text(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(point -> {
            switch (point) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(allowed(point) ? point : '?');
            }
        });
        return out.toString();
    }

    /** Text in an attribute, on one line. */
    static String attribute(String text) {
        return text(text.replace('\n', ' ').replace('\t', ' ').replace('\r', ' '));
    }

    /** What XML 1.0 can hold, without what turns the direction of a text. */
    private static boolean allowed(int point) {
        boolean character = point == '\n' || point == '\t' || (point >= ' ' && point <= 0xD7FF) || point >= 0xE000;
        int type = Character.getType(point);
        boolean obeyed = type == Character.CONTROL && point != '\n' && point != '\t' || type == Character.FORMAT;
        return character && !obeyed && point != 0xFFFE && point != 0xFFFF;
    }

    /** Text in a cell of a table of Markdown. */
    static String cell(String text) {
        StringBuilder out = new StringBuilder();
        Lines.visible(text.replace('\n', ' ')).codePoints().forEach(point -> {
            if ("\\`*_{}[]()#+-.!|~".indexOf(point) >= 0 && !harmless(point)) {
                out.append('\\');
            }
            switch (point) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                default -> out.appendCodePoint(point);
            }
        });
        return out.toString();
    }

    /** What means nothing inside a line. */
    private static boolean harmless(int point) {
        return point == '.'
                || point == '-'
                || point == '('
                || point == ')'
                || point == '+'
                || point == '#'
                || point == '!';
    }
}
