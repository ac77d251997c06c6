package dev.underprop.wire.tree;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.wire.quantity.ShortestNumber;
import java.util.Arrays;
import java.util.Map;

/**
 * A tree as RFC 8785 (JSON Canonicalization Scheme) writes it: members sorted by UTF-16 units, no blanks, shortest
 * numbers, only what must be escaped escaped. Layout and language of the text do not show.
 */
public final class Canonical {

    private Canonical() {}

    /** The canonical text of a tree whose numbers are finite. */
    public static String text(JsonNode tree) {
        StringBuilder out = new StringBuilder(2048);
        write(tree, out);
        return out.toString();
    }

    // Recursion is bounded by the depth of the tree, which the reader limits.
    private static void write(JsonNode node, StringBuilder out) {
        if (node.isObject()) {
            writeObject(node, out);
        } else if (node.isArray()) {
            writeList(node, out);
        } else if (node.isTextual()) {
            writeText(node.textValue(), out);
        } else if (node.isNumber()) {
            out.append(ShortestNumber.of(node.doubleValue()));
        } else {
            out.append(node.asText());
        }
    }

    private static void writeObject(JsonNode node, StringBuilder out) {
        String[] names = new String[node.size()];
        int count = 0;
        for (Map.Entry<String, JsonNode> entry : node.properties()) {
            names[count] = entry.getKey();
            count++;
        }
        Arrays.sort(names);
        out.append('{');
        for (int i = 0; i < count; i++) {
            if (i > 0) {
                out.append(',');
            }
            writeText(names[i], out);
            out.append(':');
            write(node.get(names[i]), out);
        }
        out.append('}');
    }

    private static void writeList(JsonNode node, StringBuilder out) {
        out.append('[');
        for (int i = 0; i < node.size(); i++) {
            if (i > 0) {
                out.append(',');
            }
            write(node.get(i), out);
        }
        out.append(']');
    }

    private static void writeText(String text, StringBuilder out) {
        out.append('"');
        int from = 0;
        for (int i = 0; i < text.length(); i++) {
            char unit = text.charAt(i);
            if (unit < ' ' || unit == '"' || unit == '\\') {
                out.append(text, from, i);
                writeUnit(unit, out);
                from = i + 1;
            }
        }
        out.append(text, from, text.length()).append('"');
    }

    private static void writeUnit(char unit, StringBuilder out) {
        switch (unit) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\b' -> out.append("\\b");
            case '\f' -> out.append("\\f");
            case '\n' -> out.append("\\n");
            case '\r' -> out.append("\\r");
            case '\t' -> out.append("\\t");
            default -> out.append("\\u00").append(unit < 16 ? "0" : "").append(Integer.toHexString(unit));
        }
    }
}
