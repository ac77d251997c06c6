package dev.underprop.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.swagger.v3.parser.OpenAPIV3Parser;
import io.swagger.v3.parser.core.models.SwaggerParseResult;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class ContractTest {
    private static final Set<String> CLOSED_ROOMS =
            Set.of("Floor", "JobPlan", "Joist", "Load", "Pad", "Post", "Shore", "Situation");

    /** Text whose lines are plans; what is held of a plan holds for each of them. */
    private static final String LINES = "PlanLines";

    private final Contract contract = new Contract();

    @Test
    void parsesAsVersion303() {
        SwaggerParseResult result = new OpenAPIV3Parser().readContents(contract.text());

        assertThat(result.getMessages()).isEmpty();
        assertThat(result.getOpenAPI().getOpenapi()).isEqualTo("3.0.3");
    }

    @Test
    void everyOperationHasAnIdOfItsOwn() {
        List<String> ids = contract.operations().values().stream()
                .map(operation -> operation.path("operationId").asText())
                .toList();

        assertThat(ids)
                .containsExactlyInAnyOrder(
                        "analyseLayout",
                        "checkPlan",
                        "checkPlans",
                        "sizePads",
                        "planLift",
                        "listChecks",
                        "explainCheck",
                        "listCatalogue",
                        "showCatalogue",
                        "explainProblem",
                        "getContract",
                        "healthLive",
                        "healthReady",
                        "showMetrics",
                        "showService",
                        "showDocs",
                        "getPageFile");
    }

    @Test
    void noSchemaIsCombinedOrNullable() {
        for (String word : List.of("oneOf", "anyOf", "allOf", "not", "nullable", "discriminator")) {
            assertThat(contract.schemas().findValues(word)).as(word).isEmpty();
        }
    }

    @Test
    void everySchemaThatIsAnObjectIsNamed() {
        contract.schemas().properties().forEach(schema -> {
            for (JsonNode inner : schema.getValue().path("properties")) {
                assertThat(inner.path("type").asText()).as(schema.getKey()).isNotEqualTo("object");
                assertThat(inner.at("/items/type").asText()).as(schema.getKey()).isNotEqualTo("object");
            }
        });
        contract.bodies()
                .forEach((name, body) ->
                        assertThat(body.at("/schema/$ref").asText()).as(name).startsWith("#/components/schemas/"));
    }

    @Test
    void requestsAreClosed() {
        assertThat(contract.requestSchemas()).containsAll(CLOSED_ROOMS);
        for (String name : plans()) {
            JsonNode schema = contract.schemas().get(name);
            assertThat(schema.get("type").asText()).as(name).isEqualTo("object");
            assertThat(schema.path("additionalProperties").toString()).as(name).isEqualTo("false");
        }
    }

    @Test
    void requestsHaveNoEnumsAndNoDefaults() {
        for (String name : contract.requestSchemas()) {
            JsonNode schema = contract.schemas().get(name);
            assertThat(schema.findValues("enum")).as(name).isEmpty();
            assertThat(schema.findValues("default")).as(name).isEmpty();
        }
        assertThat(contract.tree().at("/components/parameters").findValues("enum"))
                .isEmpty();
    }

    private Set<String> plans() {
        Set<String> plans = new TreeSet<>(contract.requestSchemas());
        assertThat(plans.remove(LINES)).isTrue();
        assertThat(contract.schemas().get(LINES).get("type").asText()).isEqualTo("string");
        return plans;
    }

    @Test
    void requestsAreBounded() {
        for (String name : plans()) {
            contract.schemas()
                    .get(name)
                    .get("properties")
                    .properties()
                    .forEach(member -> assertBounded(name + "." + member.getKey(), member.getValue()));
        }
    }

    private static void assertBounded(String name, JsonNode schema) {
        String bound = switch (schema.path("type").asText()) {
            case "string" -> "maxLength";
            case "array" -> "maxItems";
            case "integer", "number" -> "maximum";
            default -> "";
        };
        if (!bound.isEmpty()) {
            assertThat(schema.has(bound)).as(name + " has " + bound).isTrue();
        }
    }

    @Test
    void answersAreOpen() {
        Set<String> requests = contract.requestSchemas();
        contract.schemas().properties().stream()
                .filter(schema -> !requests.contains(schema.getKey()))
                .forEach(schema -> assertThat(schema.getValue().has("additionalProperties"))
                        .as(schema.getKey())
                        .isFalse());
    }

    @Test
    void everyFaultThatHttpKnowsIsAnsweredAsAProblem() {
        Map<String, JsonNode> bodies = contract.bodies();
        for (String plan : List.of("post /v1/layout-analyses ", "post /v1/plan-checks ")) {
            for (String status : List.of("400", "404", "405", "406", "413", "415", "422", "500", "503")) {
                assertThat(bodies).containsKey(plan + status + " application/problem+json");
            }
        }
    }
}
