package dev.underprop.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The contract as a tree, and the parts of it that the tests ask about, by name. */
final class Contract {
    private static final Set<String> METHODS = Set.of("get", "put", "post", "delete", "patch", "head", "options");

    private final String text = read();
    private final JsonNode tree = parse(text);

    String text() {
        return text;
    }

    JsonNode tree() {
        return tree;
    }

    JsonNode schemas() {
        return tree.at("/components/schemas");
    }

    /** Every operation under its method and path. */
    Map<String, JsonNode> operations() {
        Map<String, JsonNode> operations = new LinkedHashMap<>();
        tree.get("paths")
                .properties()
                .forEach(path -> path.getValue().properties().stream()
                        .filter(member -> METHODS.contains(member.getKey()))
                        .forEach(member -> operations.put(member.getKey() + " " + path.getKey(), member.getValue())));
        return operations;
    }

    /** Every body that is sent or answered, under its operation, its status (or "request") and its media type. */
    Map<String, JsonNode> bodies() {
        Map<String, JsonNode> bodies = new LinkedHashMap<>();
        operations().forEach((name, operation) -> {
            addContent(bodies, name + " request", operation.path("requestBody"));
            operation
                    .get("responses")
                    .properties()
                    .forEach(answer -> addContent(bodies, name + " " + answer.getKey(), answer.getValue()));
        });
        return bodies;
    }

    private void addContent(Map<String, JsonNode> bodies, String name, JsonNode holder) {
        resolved(holder)
                .path("content")
                .properties()
                .forEach(type -> bodies.put(name + " " + type.getKey(), type.getValue()));
    }

    /** The names of all schemas that a request reaches. */
    Set<String> requestSchemas() {
        Set<String> reached = new TreeSet<>();
        bodies().forEach((name, body) -> {
            if (name.contains(" request ")) {
                reach(body.get("schema"), reached);
            }
        });
        return reached;
    }

    private void reach(JsonNode node, Set<String> reached) {
        for (JsonNode reference : node.findValues("$ref")) {
            String name = reference.textValue().substring("#/components/schemas/".length());
            if (reached.add(name)) {
                reach(schemas().get(name), reached);
            }
        }
    }

    /** What a reference leads to, or the node itself. */
    JsonNode resolved(JsonNode node) {
        JsonNode reference = node.path("$ref");
        return reference.isTextual() ? tree.at(reference.textValue().substring(1)) : node;
    }

    private static String read() {
        try (InputStream in = Contract.class.getResourceAsStream("/openapi/openapi.yaml")) {
            if (in == null) {
                throw new IllegalStateException("The contract is not on the class path");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode parse(String text) {
        try {
            return new YAMLMapper().readTree(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
