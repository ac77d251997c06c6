package dev.underprop.app.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Which examples of answers the contract shows, and where. */
final class ContractExamples {
    private static final String SHARED = "#/components/responses/";

    private final JsonNode contract;

    ContractExamples(JsonNode contract) {
        this.contract = contract;
    }

    JsonNode value(String example) {
        JsonNode value = contract.at("/components/examples/" + example + "/value");
        if (value.isMissingNode()) {
            throw new IllegalStateException("The contract has no example " + example);
        }
        return value;
    }

    /** Every example where it is shown: under an operation and status, or in an answer that operations share. */
    Set<String> uses() {
        Set<String> uses = new TreeSet<>();
        for (JsonNode operation : operations()) {
            operation.get("responses").properties().forEach(response -> {
                String place = place(operation, response.getKey());
                names(resolved(response.getValue())).forEach(name -> uses.add(place + name));
            });
        }
        return uses;
    }

    /** Where a row of the table belongs, in the same form. */
    String use(ExampleRequest row) {
        return place(operation(row.operation()), Integer.toString(row.status())) + row.example();
    }

    /** The names of the examples that an operation shows under a status. */
    List<String> names(String operation, int status) {
        return names(response(operation, status));
    }

    /** The values of the examples of the headers that an operation promises under a status. */
    Map<String, List<String>> headers(String operation, int status) {
        Map<String, List<String>> headers = new LinkedHashMap<>();
        response(operation, status).path("headers").properties().forEach(header -> {
            List<String> values = new ArrayList<>();
            resolved(header.getValue())
                    .path("examples")
                    .forEach(example -> values.add(example.get("value").asText()));
            headers.put(header.getKey(), values);
        });
        return headers;
    }

    private String place(JsonNode operation, String status) {
        String reference = operation.at("/responses/" + status + "/$ref").asText();
        return reference.startsWith(SHARED)
                ? reference.substring(SHARED.length()) + " "
                : operation.get("operationId").textValue() + " " + status + " ";
    }

    private JsonNode response(String operation, int status) {
        return resolved(operation(operation).at("/responses/" + status));
    }

    private static List<String> names(JsonNode response) {
        List<String> names = new ArrayList<>();
        for (JsonNode type : response.path("content")) {
            type.get("examples").properties().forEach(example -> names.add(nameOf(example)));
        }
        return names;
    }

    /** The name in components, which must be the name under which it is shown. */
    private static String nameOf(Map.Entry<String, JsonNode> example) {
        String reference = example.getValue().path("$ref").asText();
        if (!reference.equals("#/components/examples/" + example.getKey())) {
            throw new IllegalStateException("Not one of the examples of components: " + example.getKey());
        }
        return example.getKey();
    }

    private JsonNode operation(String id) {
        return operations().stream()
                .filter(operation -> operation.path("operationId").asText().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("There is no operation " + id));
    }

    private List<JsonNode> operations() {
        List<JsonNode> operations = new ArrayList<>();
        contract.get("paths").forEach(path -> path.forEach(operations::add));
        return operations;
    }

    private JsonNode resolved(JsonNode node) {
        JsonNode reference = node.path("$ref");
        return reference.isTextual() ? contract.at(reference.textValue().substring(1)) : node;
    }
}
