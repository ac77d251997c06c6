package dev.underprop.wire.tree;

import com.fasterxml.jackson.core.JsonProcessingException;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.List;

/** What the JSON parser complains of, in words for the writer of a document; its own speak of its settings. */
final class JsonComplaint {
    private static final List<String> NOT_FINITE = List.of("NaN", "Infinity", "+Infinity", "-Infinity", "INF", "-INF");
    private static final int LONGEST_WORD = 64;

    private JsonComplaint() {}

    static Fault of(String text, JsonProcessingException complaint) {
        int offset = offset(text, complaint);
        int start = wordStart(text, offset);
        String word = text.substring(start, wordEnd(text, offset));
        String message = complaint.getOriginalMessage();
        if (NOT_FINITE.contains(word)) {
            return at(text, start, Messages.NUMBER_NOT_FINITE.fault(word));
        }
        boolean inNumber = message.contains("numeric value");
        boolean ofWord = inNumber || message.startsWith("Unrecognized token");
        String got = ofWord ? word : message.contains("end-of-input") ? "" : character(text, offset);
        return at(text, ofWord ? start : offset, Messages.SYNTAX.fault(got, "JSON", why(message, inNumber)));
    }

    private static String why(String message, boolean inNumber) {
        if (inNumber) {
            return "this is not how JSON writes numbers";
        }
        if (message.contains("end-of-input")) {
            return "it ends before it is complete";
        }
        if (message.startsWith("Unrecognized token")) {
            return "words other than true, false and null stand in double quotes";
        }
        if (message.startsWith("Unexpected close marker")) {
            return "this closes something other than what was opened last";
        }
        if (message.startsWith("Unrecognized character escape")) {
            return "a backslash stands before a character that makes no escape";
        }
        if (message.startsWith("Illegal unquoted character")) {
            return "a line end, tab or control character stands inside a text and must be written as an escape";
        }
        return missing(message);
    }

    private static String missing(String message) {
        if (message.contains("expecting comma")) {
            return "a comma or a closing bracket is missing";
        }
        if (message.contains("expecting a colon")) {
            return "a colon is missing after a name";
        }
        if (message.contains("to start field name")) {
            return "a name in double quotes belongs here, and no comma before a closing bracket";
        }
        return "something else belongs here";
    }

    private static Fault at(String text, int offset, Fault fault) {
        Place place = Place.of(text.substring(0, offset));
        return fault.at(place.line(), place.column());
    }

    private static int offset(String text, JsonProcessingException complaint) {
        long offset =
                complaint.getLocation() == null ? -1 : complaint.getLocation().getCharOffset();
        return offset < 0 ? text.length() : (int) Math.min(offset, text.length());
    }

    private static String character(String text, int offset) {
        return offset < text.length() ? Character.toString(text.codePointAt(offset)) : "";
    }

    private static int wordStart(String text, int offset) {
        int from = offset;
        while (from > 0 && offset - from < LONGEST_WORD && inWord(text.charAt(from - 1))) {
            from--;
        }
        return from;
    }

    private static int wordEnd(String text, int offset) {
        int to = offset;
        while (to < text.length() && to - offset < LONGEST_WORD && inWord(text.charAt(to))) {
            to++;
        }
        return to;
    }

    private static boolean inWord(char c) {
        return Character.isLetterOrDigit(c) || c == '-' || c == '+' || c == '.';
    }
}
