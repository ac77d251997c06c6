package dev.underprop.wire.tree;

import com.fasterxml.jackson.core.JsonProcessingException;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.List;

/** What the JSON parser complains of, in our words where its own speak of its settings. */
final class JsonComplaint {
    private static final List<String> NOT_FINITE = List.of("NaN", "Infinity", "+Infinity", "-Infinity", "INF", "-INF");
    private static final int LONGEST_WORD = 20;

    private JsonComplaint() {}

    static Fault of(String text, JsonProcessingException complaint) {
        int offset = offset(text, complaint);
        Place place = Place.of(text.substring(0, offset));
        String word = wordBefore(text, offset);
        Fault fault = NOT_FINITE.contains(word)
                ? Messages.NUMBER_NOT_FINITE.fault(word)
                : Messages.SYNTAX.fault("", "JSON", Fault.shown(plain(complaint.getOriginalMessage())));
        return fault.at(place.line(), place.column());
    }

    private static int offset(String text, JsonProcessingException complaint) {
        long offset =
                complaint.getLocation() == null ? -1 : complaint.getLocation().getCharOffset();
        return offset < 0 ? text.length() : (int) Math.min(offset, text.length());
    }

    /** The parser names settings of its own in brackets and counts codes; a writer of plans needs neither. */
    private static String plain(String message) {
        String plain = message.replaceAll("\\s*\\((enable|for|start marker|code|CTRL-CHAR)[^)]*\\)", "")
                .replaceAll("\\s*: (was )?(expected|expecting) .*$", "")
                .replaceAll("\\s+", " ");
        String start = plain.isEmpty() ? "unexpected text" : plain;
        return Character.toLowerCase(start.charAt(0)) + start.substring(1);
    }

    private static String wordBefore(String text, int offset) {
        int from = offset;
        while (from > 0 && offset - from < LONGEST_WORD && wordly(text.charAt(from - 1))) {
            from--;
        }
        int to = offset;
        while (to < text.length() && to - offset < LONGEST_WORD && wordly(text.charAt(to))) {
            to++;
        }
        return text.substring(from, to);
    }

    private static boolean wordly(char c) {
        return Character.isLetterOrDigit(c) || c == '-' || c == '+';
    }
}
