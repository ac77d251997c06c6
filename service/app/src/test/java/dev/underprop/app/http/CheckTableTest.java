package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.engine.check.CheckId;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Walks the table of checks through the whole service: each that is built has a page, a plan it is content with and one it
 * is not, words for both, and a citation. A check that is built without them breaks the build here.
 */
@ExtendWith(RunningService.class)
class CheckTableTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** Answers by plan, so that a plan that shows several checks is asked once. */
    private static final Map<String, List<JsonNode>> ANSWERS = new HashMap<>();

    static Stream<CheckId> built() {
        return Arrays.stream(CheckId.values()).filter(CheckId::built);
    }

    /** Every result of every check in every situation. */
    private static List<JsonNode> results(String plan) {
        return ANSWERS.computeIfAbsent(plan, CheckTableTest::asked);
    }

    private static List<JsonNode> asked(String plan) {
        Response answer = Client.postYaml("/v1/layout-analyses?detail=full", plan);
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(200);
        try {
            List<JsonNode> results = new ArrayList<>();
            JSON.readTree(answer.asByteArray()).get("checks").forEach(results::add);
            return results;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<JsonNode> results(String plan, CheckId id) {
        return results(plan).stream()
                .filter(result -> result.get("check").asText().equals(id.id()))
                .toList();
    }

    private static List<String> verdicts(String plan, CheckId id) {
        return results(plan, id).stream()
                .map(result -> result.get("verdict").asText())
                .distinct()
                .toList();
    }

    private static List<JsonNode> results(CheckCases.Case shown, CheckId id) {
        return results(shown.plan(), id).stream()
                .filter(result -> result.get("verdict").asText().equals(shown.verdict()))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("built")
    void itHasAPageThatIsServed(CheckId id) {
        Response page = Client.right().get("/v1/checks/" + id.id());

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.jsonPath().getString("title")).isEqualTo(id.title());
        assertThat(page.jsonPath().getString("remedy")).isNotBlank();
        assertThat(page.jsonPath().getString("whenFails")).isNotBlank();
        assertThat(page.jsonPath().getList("citations")).isNotEmpty();
    }

    /** Content is PASS at one place at least and neither FAIL nor NOT_CHECKED at any. */
    @ParameterizedTest
    @MethodSource("built")
    void itIsContentWithOnePlan(CheckId id) {
        CheckCases cases = CheckCases.of(id);

        assertThat(verdicts(cases.good().plan(), id))
                .contains(cases.good().verdict())
                .isSubsetOf("PASS", "NOT_APPLICABLE");
        assertWorded(results(cases.good(), id), id);
    }

    @ParameterizedTest
    @MethodSource("built")
    void itIsNotContentWithAnother(CheckId id) {
        CheckCases cases = CheckCases.of(id);
        List<JsonNode> bad = results(cases.bad(), id);

        assertThat(bad).isNotEmpty();
        assertWorded(bad, id);
        if (cases.bad().verdict().equals("FAIL")) {
            // The last sentence is the remedy: "[what was found]. [What helps.]"
            assertThat(bad)
                    .allSatisfy(result ->
                            assertThat(result.get("message").asText()).matches("(?s).+\\. [A-Z][^.]{10,}\\."));
        }
    }

    private static void assertWorded(List<JsonNode> results, CheckId id) {
        assertThat(results).allSatisfy(result -> {
            assertThat(result.get("message").asText()).startsWith(id.title()).endsWith(".");
            assertThat(result.get("place").asText()).isNotBlank();
        });
        assertThat(results)
                .anySatisfy(result -> assertThat(result.at("/citation/locator").asText())
                        .isNotBlank()
                        .isNotEqualTo("no rule was applied"));
    }

    /** A check either passes one plan and fails the other, or says why it never does one of them, and then never does. */
    @ParameterizedTest
    @MethodSource("built")
    void itPassesAndFailsOrSaysWhyItNeverDoes(CheckId id) {
        CheckCases cases = CheckCases.of(id);
        List<String> missing = Stream.of("PASS", "FAIL")
                .filter(verdict -> !cases.verdicts().contains(verdict))
                .toList();

        assertThat(cases.good().verdict()).isIn("PASS", "NOT_APPLICABLE");
        assertThat(cases.bad().verdict()).isIn("FAIL", "NOT_CHECKED");
        assertThat(cases.because().isBlank()).as("reason").isEqualTo(missing.isEmpty());
        for (String plan : CheckCases.plans()) {
            assertThat(verdicts(plan, id)).noneMatch(missing::contains);
        }
    }

    @ParameterizedTest
    @EnumSource
    void plansAreGivenForWhatIsBuiltAndNothingElse(CheckId id) {
        assertThat(CheckCases.given(id)).isEqualTo(id.built());
    }

    @Test
    void whatIsNotBuiltIsCheckedNowhere() {
        List<CheckId> open =
                Arrays.stream(CheckId.values()).filter(id -> !id.built()).toList();
        for (CheckId id : open) {
            for (String plan : CheckCases.plans()) {
                assertThat(verdicts(plan, id)).as(id.id()).isSubsetOf("NOT_CHECKED");
            }
        }
        assertThat(built()).hasSize(CheckId.values().length - open.size());
    }
}
