package dev.underprop.app.report;

import java.io.Console;

/**
 * Colours on a terminal that wants them; plain text everywhere else.
 *
 * @param on whether to colour
 */
public record Paint(boolean on) {
    private static final String END = "\u001b[0m";

    /** Colour when the standard output is a terminal, unless NO_COLOR is set or the terminal is dumb. */
    static Paint forTerminal() {
        String refused = System.getenv("NO_COLOR");
        boolean wanted = (refused == null || refused.isEmpty()) && !"dumb".equals(System.getenv("TERM"));
        return new Paint(wanted && terminal());
    }

    /** Before JDK 22 there is no console without a terminal; from then on there is one, and a method that tells. */
    @SuppressWarnings("SystemConsoleNull")
    public static boolean terminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (NoSuchMethodException e) {
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }

    String strong(String text) {
        return painted("1", text);
    }

    String danger(String text) {
        return painted("1;31", text);
    }

    String warning(String text) {
        return painted("1;33", text);
    }

    String good(String text) {
        return painted("1;32", text);
    }

    private String painted(String code, String text) {
        return on ? "\u001b[" + code + "m" + text + END : text;
    }
}
