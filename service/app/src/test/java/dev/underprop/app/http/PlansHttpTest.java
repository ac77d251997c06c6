package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.app.Demos;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** Plans over HTTP: every demo through both endpoints, every answer held against the contract. */
@ExtendWith(RunningService.class)
class PlansHttpTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    static List<String> validDemos() {
        return Demos.valid();
    }

    @ParameterizedTest
    @MethodSource("validDemos")
    void bothEndpointsGiveTheSameVerdictAndNumbers(String demo) throws IOException {
        JsonNode check = JSON.readTree(answered("/v1/plan-checks", demo).asByteArray());
        JsonNode analysis = JSON.readTree(answered("/v1/layout-analyses", demo).asByteArray());

        assertThat(check.get("document").asText()).isEqualTo("plan-check");
        assertThat(analysis.get("document").asText()).isEqualTo("layout-analysis");
        for (String member :
                List.of("verdict", "headline", "checks", "notChecked", "counts", "planDigest", "advisories")) {
            assertThat(check.get(member)).as(member).isNotNull().isEqualTo(analysis.get(member));
        }
        assertThat(check.findValues("members")).isEmpty();
        assertThat(check.findValues("contacts")).isEmpty();
        assertThat(analysis.get("situations").findValues("members")).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("validDemos")
    void jsonAndYamlGiveTheSameBytes(String demo) throws IOException {
        Object tree = new Yaml(new SafeConstructor(new LoaderOptions())).load(Demos.text(demo));
        byte[] json = JSON.writeValueAsBytes(tree);

        Response fromJson =
                Client.right().contentType("application/json").body(json).post("/v1/layout-analyses?detail=full");
        Response fromYaml = Client.postYaml("/v1/layout-analyses?detail=full", Demos.text(demo));

        assertThat(fromJson.statusCode()).isEqualTo(200);
        assertThat(fromJson.asByteArray()).isEqualTo(fromYaml.asByteArray());
    }

    @ParameterizedTest
    @CsvSource({
        "adequate.yaml, ADEQUATE",
        "bare.yaml, INCOMPLETE",
        "complete.yaml, INADEQUATE",
        "lift-alone.yaml, INADEQUATE",
        "lift-by-jacks.yaml, INADEQUATE",
        "lift-far-wall.yaml, UNSTABLE",
        "lift-hopeless.yaml, INADEQUATE",
        "lift-sinking-pad.yaml, INADEQUATE",
        "lift-together.yaml, INADEQUATE",
        "old-floor.yaml, INADEQUATE",
        "overhanging-end-joist.yaml, INADEQUATE",
        "reference.yaml, INADEQUATE",
        "sill-out-loose.yaml, UNSTABLE",
        "sill-out-tied.yaml, INADEQUATE",
        "snug-shore.yaml, INADEQUATE",
        "soft-ground.yaml, INADEQUATE",
        "tipping-porch.yaml, INADEQUATE",
        "two-spans.yaml, INCOMPLETE",
    })
    void verdictIsAnAnswerWhateverItIs(String demo, String verdict) {
        assertThat(answered("/v1/plan-checks", demo).jsonPath().getString("verdict"))
                .isEqualTo(verdict);
    }

    @Test
    void everyValidDemoHasAVerdictInTheTableAbove() {
        assertThat(Demos.valid()).hasSize(18);
    }

    @Test
    void tiesBeyondTheirCapacityAreWhatFails() {
        Response answer = answered("/v1/plan-checks", "sill-out-tied.yaml");

        assertThat(answer.jsonPath().getList("checks.findAll { it.verdict == 'FAIL' }.check"))
                .contains("bearing-uplift", "tipping", "bearing-transfer");
        assertThat(answer.jsonPath().getString("headline")).contains("factor of safety against tipping");
    }

    @Test
    void looseJoistsTurnOverTheShore() {
        Response answer = answered("/v1/plan-checks", "sill-out-loose.yaml");

        assertThat(answer.jsonPath().getList("situations.state")).containsExactly("STABLE", "UNSTABLE");
        assertThat(answer.jsonPath().getString("situations[1].reason"))
                .contains("turns over S")
                .contains("lifts off girder");
        assertThat(answer.jsonPath().getList("situations[1].handChecks.place")).contains("S2");
        assertThat(answer.jsonPath().getList("situations[1].posts")).isEmpty();
    }

    @Test
    void unitsChangeTheNumbersButNotThePlan() {
        Response us = answered("/v1/plan-checks", "two-spans.yaml");
        Response si = answered("/v1/plan-checks?units=si", "two-spans.yaml");

        assertThat(si.jsonPath().getString("planDigest"))
                .isEqualTo(us.jsonPath().getString("planDigest"));
        assertThat(us.jsonPath().getString("situations[0].posts[1].greatest.unit"))
                .isEqualTo("lb");
        assertThat(si.jsonPath().getString("situations[0].posts[1].greatest.unit"))
                .isEqualTo("kN");
        assertThat(si.jsonPath().getDouble("situations[0].posts[1].greatest.value"))
                .isCloseTo(22.2411081, within(1e-6));
    }

    @Test
    void fullDetailAddsTheLoadCases() {
        assertThat(answered("/v1/layout-analyses", "two-spans.yaml").jsonPath().getList("situations.loadCases"))
                .containsOnlyNulls();
        assertThat(answered("/v1/layout-analyses?detail=full", "two-spans.yaml")
                        .jsonPath()
                        .getList("situations[0].loadCases"))
                .isNotEmpty();
    }

    @Test
    void sameQuestionGivesTheSameBytes() {
        byte[] first =
                answered("/v1/layout-analyses?detail=full", "old-floor.yaml").asByteArray();
        byte[] second =
                answered("/v1/layout-analyses?detail=full", "old-floor.yaml").asByteArray();

        assertThat(second).isEqualTo(first);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/v1/plan-checks", "/v1/layout-analyses"})
    void everyFaultIsToldWithItsPlace(String path) {
        Response names = Client.wrong()
                .contentType("application/yaml")
                .body(bytes(Demos.text("invalid-names.yaml")))
                .post(path);
        Response sizes = Client.wrong()
                .contentType("application/json")
                .body(bytes(Demos.text("invalid-sizes.json")))
                .post(path);

        assertThat(names.statusCode()).isEqualTo(422);
        assertThat(names.jsonPath().getString("detail")).isEqualTo("The plan has 7 faults.");
        assertThat(names.jsonPath().getList("errors.pointer"))
                .containsExactly(
                        "/floor/joists/species",
                        "/floor/bearings/1/kind",
                        "/floor/loads/1/joist",
                        "/shores/0/posts/0/type",
                        "/shores/0/posts/1/name",
                        "/shores/0/posts/1/pad",
                        "/situations/1/removed/0");
        assertThat(sizes.statusCode()).isEqualTo(422);
        assertThat(sizes.jsonPath().getList("errors.line")).containsExactly(7, 8, 11, 12, 14, 22, 23, 23);
        assertThat(sizes.jsonPath().getList("errors.column"))
                .doesNotContainNull()
                .hasSize(8);
    }

    private static Response answered(String path, String demo) {
        Response answer = Client.postYaml(path, Demos.text(demo));
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(200);
        assertThat(answer.contentType()).isEqualTo("application/json");
        return answer;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
