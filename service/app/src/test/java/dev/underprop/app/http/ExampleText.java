package dev.underprop.app.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Trees as YAML, as the contract writes it: on one line what fits on one, text in quotes unless it is harmless. */
final class ExampleText {
    private static final int WIDTH = 160;
    private static final Pattern HARMLESS = Pattern.compile("[A-Za-z/]|[A-Za-z/][A-Za-z0-9 ._()%/+-]*[A-Za-z0-9.)%/]");
    private static final Set<String> WORDS = Set.of("y", "n", "yes", "no", "on", "off", "true", "false", "null");

    private ExampleText() {}

    /** The lines of a member, indented. */
    static List<String> member(String name, JsonNode value, int indent) {
        String key = " ".repeat(indent) + name + ":";
        String inline = key + " " + inline(value);
        List<String> lines = new ArrayList<>();
        if (value.isTextual() && value.textValue().contains("\n")) {
            lines.add(key + " |");
            value.textValue().lines().forEach(line -> lines.add((" ".repeat(indent + 2) + line).stripTrailing()));
        } else if (value.isValueNode() || value.isEmpty() || inline.length() <= WIDTH) {
            lines.add(inline);
        } else {
            lines.add(key);
            lines.addAll(block(value, indent + 2));
        }
        return lines;
    }

    private static List<String> block(JsonNode value, int indent) {
        List<String> lines = new ArrayList<>();
        if (value.isObject()) {
            value.properties().forEach(member -> lines.addAll(member(member.getKey(), member.getValue(), indent)));
        }
        if (value.isArray()) {
            value.forEach(item -> lines.addAll(item(item, indent)));
        }
        return lines;
    }

    private static List<String> item(JsonNode item, int indent) {
        String dash = " ".repeat(indent) + "- ";
        String inline = dash + inline(item);
        if (item.isValueNode() || item.isEmpty() || inline.length() <= WIDTH) {
            return List.of(inline);
        }
        List<String> lines = block(item, indent + 2);
        lines.set(0, dash + lines.get(0).substring(indent + 2));
        return lines;
    }

    private static String inline(JsonNode value) {
        if (value.isObject() && !value.isEmpty()) {
            return value.properties().stream()
                    .map(ExampleText::inlineMember)
                    .collect(Collectors.joining(", ", "{ ", " }"));
        }
        if (value.isArray() && !value.isEmpty()) {
            List<String> items = new ArrayList<>();
            value.forEach(item -> items.add(inline(item)));
            return "[" + String.join(", ", items) + "]";
        }
        return value instanceof TextNode text ? scalar(text.textValue()) : value.toString();
    }

    private static String inlineMember(Map.Entry<String, JsonNode> member) {
        return scalar(member.getKey()) + ": " + inline(member.getValue());
    }

    private static String scalar(String text) {
        if (text.chars().anyMatch(c -> c < ' ')) {
            return TextNode.valueOf(text).toString();
        }
        boolean plain = HARMLESS.matcher(text).matches() && !WORDS.contains(text.toLowerCase(Locale.ROOT));
        return plain ? text : "'" + text.replace("'", "''") + "'";
    }
}
