package dev.underprop.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.util.Iterator;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class ContractExamplesTest {
    private final Contract contract = new Contract();

    @Test
    void everyBodyHasNamedExamplesThatFitItsSchema() {
        assertThat(contract.bodies()).hasSizeGreaterThan(60);
        contract.bodies().forEach((name, body) -> {
            assertThat(body.path("examples").size()).as(name).isPositive();
            body.get("examples")
                    .properties()
                    .forEach(example ->
                            assertFits(name + ": " + example.getKey(), body.get("schema"), example.getValue()));
        });
    }

    private void assertFits(String name, JsonNode schema, JsonNode example) {
        JsonNode value = contract.resolved(example).path("value");
        assertThat(value.isMissingNode()).as(name + " has no value").isFalse();
        assertThat(schema(schema).validate(value)).as(name).isEmpty();
        String reference = schema.get("$ref").asText();
        assertThat(strangers(value, contract.resolved(schema)))
                .as(name + " against " + reference)
                .isEmpty();
    }

    @Test
    void everyPlanIsShownInJsonAndYaml() {
        for (String operation : Set.of("post /v1/layout-analyses", "post /v1/plan-checks")) {
            JsonNode json = contract.bodies()
                    .get(operation + " request application/json")
                    .get("examples");
            JsonNode yaml = contract.bodies()
                    .get(operation + " request application/yaml")
                    .get("examples");
            assertThat(yaml).isEqualTo(json);
            assertThat(json.has("planCarriageHouse")).isTrue();
        }
    }

    @Test
    void everyExampleIsUsed() {
        Set<String> used = new TreeSet<>();
        contract.bodies()
                .values()
                .forEach(body -> body.get("examples")
                        .findValues("$ref")
                        .forEach(reference ->
                                used.add(reference.asText().substring("#/components/examples/".length()))));

        Set<String> written = new TreeSet<>();
        contract.tree().at("/components/examples").fieldNames().forEachRemaining(written::add);
        assertThat(used).isEqualTo(written);
    }

    @Test
    void aMisspeltExampleIsFound() {
        ObjectNode reference = JsonNodeFactory.instance.objectNode().put("$ref", "#/components/schemas/Quantity");
        ObjectNode value =
                JsonNodeFactory.instance.objectNode().put("value", 1.0).put("unt", "ft");

        assertThat(schema(reference).validate(value)).hasSize(1);
        assertThat(strangers(value, reference)).containsExactly("unt");
    }

    /** Members of an example that its schema does not describe; an open schema would let them pass. */
    private Set<String> strangers(JsonNode value, JsonNode schema) {
        Set<String> strangers = new TreeSet<>();
        JsonNode known = contract.resolved(schema);
        if (value.isArray()) {
            value.forEach(item -> strangers.addAll(strangers(item, known.get("items"))));
        }
        if (value.isObject()) {
            for (Iterator<String> names = value.fieldNames(); names.hasNext(); ) {
                String name = names.next();
                JsonNode member = known.path("properties").path(name);
                strangers.addAll(member.isMissingNode() ? Set.of(name) : strangers(value.get(name), member));
            }
        }
        return strangers;
    }

    /** The schema as JSON Schema draft 4, of which the schemas of this version of OpenAPI are a dialect. */
    private JsonSchema schema(JsonNode schema) {
        ObjectNode root = schema.deepCopy();
        root.set("components", contract.tree().get("components").deepCopy());
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V4).getSchema(root);
    }
}
