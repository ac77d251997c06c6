package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.app.Demos;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lifts over HTTP, every answer held against the contract. */
@ExtendWith(RunningService.class)
class LiftHttpTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String LIFTS = "/v1/lift-plans";

    private static JsonNode answered(String demo) throws IOException {
        Response answer = Client.postYaml(LIFTS, Demos.text(demo));
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(200);
        return JSON.readTree(answer.asByteArray());
    }

    @ParameterizedTest
    @CsvSource({
        "lift-together.yaml, PLANNED, ''",
        "lift-by-jacks.yaml, PLANNED, ''",
        "lift-alone.yaml, IMPOSSIBLE, POST",
        "lift-far-wall.yaml, IMPOSSIBLE, CONTACT",
        "lift-sinking-pad.yaml, INCOMPLETE, ''",
        "lift-hopeless.yaml, IMPOSSIBLE, SLOPE"
    })
    void everyDemoHasItsOutcome(String demo, String outcome, String stops) throws IOException {
        JsonNode plan = answered(demo);

        assertThat(plan.get("document").asText()).isEqualTo("lift-plan");
        assertThat(plan.get("outcome").asText()).isEqualTo(outcome);
        assertThat(plan.at("/obstacle/limit/limit").asText()).isEqualTo(stops);
        assertThat(plan.get("stages").isEmpty()).isEqualTo(!stops.isEmpty());
        if (!stops.isEmpty()) {
            assertThat(plan.get("headline").asText()).startsWith("Do not begin");
            assertThat(plan.at("/obstacle/help")).isNotEmpty();
        }
    }

    /** The same floor: together it goes in passes, one post alone does not go at all. */
    @Test
    void togetherInPassesAndNotAlone() throws IOException {
        JsonNode together = answered("lift-together.yaml");

        assertThat(together.at("/stages/1/passes")).hasSizeGreaterThan(1);
        assertThat(together.at("/release/possible").asBoolean()).isTrue();
        assertThat(together.at("/count/stages").asInt())
                .isEqualTo(together.at("/count/least").asInt());
        assertThat(answered("lift-alone.yaml").at("/obstacle/post").asText()).isEqualTo("A2");
    }

    /** The end of the lift, pasted into the plan as a situation, is judged like any other. */
    @Test
    void theRaisedFloorCanBePastedBack() throws IOException {
        JsonNode raised = answered("lift-together.yaml").get("raised");
        String pasted = Demos.text("lift-together.yaml")
                .replace("situations:\n", "situations:\n  - " + JSON.writeValueAsString(raised) + "\n");
        Response check = Client.postYaml("/v1/plan-checks", pasted);

        assertThat(check.statusCode()).as(check.asString()).isEqualTo(200);
        assertThat(check.jsonPath().getList("situations.name")).startsWith("raised");
    }

    /** What was out while the floor was raised, piers and part of a bearing among it, is out in what is pasted back. */
    @Test
    void theRaisedFloorNamesPiersAndPartsThatAreOut() throws IOException {
        String girder =
                "{ name: far wall, at: 15 ft 9 in, length: 3.5 in, kind: girder, beam: { size: 2x12, plies: 4, species: hem-fir,"
                        + " grade: No.2, moisture: dry, start: -6 in, length: 13 ft }, piers: [{ name: near pier, at: 0 ft, length: 8 in, kind:"
                        + " rigid }, { name: middle pier, at: 6 ft, length: 8 in, kind: rigid }, { name: end pier, at: 12 ft, length: 8 in, kind:"
                        + " rigid }] }";
        String plan = Demos.text("lift-together.yaml")
                .replace("{ name: far wall, at: 15 ft 9 in, length: 3.5 in, kind: rigid }", girder)
                .replace(
                        "removed: [sill] }",
                        "removed: [middle pier], removedParts: [{ bearing: sill, from: -1 ft, to: 7 ft }] }")
                .replace("limits: { perStage", "limits: { mayLeave: [sill, far wall], perStage")
                .replace("  onto: [sill]\n", "");
        Response answer = Client.postYaml(LIFTS, plan);
        JsonNode raised = JSON.readTree(answer.asByteArray()).get("raised");

        assertThat(raised).as(answer.asString()).isNotNull();
        assertThat(raised.at("/removed/0").asText()).isEqualTo("middle pier");
        assertThat(raised.at("/removedParts/0/bearing").asText()).isEqualTo("sill");
        Response check = Client.postYaml(
                "/v1/plan-checks",
                plan.replace("situations:\n", "situations:\n  - " + JSON.writeValueAsString(raised) + "\n"));
        assertThat(check.statusCode()).as(check.asString()).isEqualTo(200);
    }

    @Test
    void aPlanWithoutALiftIsFaulty() {
        Response answer = Client.postYaml(LIFTS, Demos.text("two-spans.yaml"));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.jsonPath().getString("errors[0].pointer")).isEqualTo("/lift");
    }

    /** Read higher than anything turned explains: nobody turns a screw. */
    @Test
    void aReadingThatNothingExplainsIssuesNoStage() throws IOException {
        String high =
                Demos.text("lift-sinking-pad.yaml").replace("over A3, level: -0.26 in", "over A3, level: -0.2 in");
        Response answer = Client.postYaml(LIFTS, high);
        JsonNode plan = JSON.readTree(answer.asByteArray());

        assertThat(plan.get("outcome").asText()).isEqualTo("INCOMPLETE");
        assertThat(plan.get("headline").asText())
                .startsWith("Stop: turn no screw.")
                .contains("Over A3");
        assertThat(plan.get("stages")).isEmpty();
        assertThat(plan.has("raised")).isFalse();
    }

    @Test
    void jacksTellWhatTheyCarryAndScrewsTurnFree() throws IOException {
        JsonNode plan = answered("lift-by-jacks.yaml");

        assertThat(plan.at("/release/possible").asBoolean()).isTrue();
        for (JsonNode way : new JsonNode[] {plan.get("stages"), plan.at("/release/stages")}) {
            for (JsonNode turn : way.findValues("turns").stream()
                    .flatMap(turns -> StreamSupport.stream(turns.spliterator(), false))
                    .toList()) {
                assertThat(turn.at("/jack/jack").asText())
                        .isEqualTo("jack at " + turn.get("post").asText());
                assertThat(turn.at("/jack/load/least").asDouble()).isGreaterThanOrEqualTo(0);
                assertThat(turn.at("/jack/lift/greatest").asDouble()).isPositive();
                assertThat(turn.has("torque")).isFalse();
            }
        }
        assertThat(plan.get("stopRules").toString())
                .contains("One jack at a time")
                .doesNotContain("greatest torque");
        assertThat(plan.get("assumptions").toString()).contains("Not looked at while a jack holds");
    }

    @Test
    void aJackThatIsNotDescribedIsRefused() {
        String jack = Demos.text("lift-together.yaml").replace("turned under load", "jack beside the post");
        Response answer = Client.postYaml(LIFTS, jack);

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.jsonPath().getString("errors[0].code")).isEqualTo("lift-by-jack");
    }

    @Test
    void aDetailIsNotAskedFor() {
        Response answer = Client.wrong()
                .contentType("application/yaml")
                .body(Demos.text("lift-together.yaml").getBytes(StandardCharsets.UTF_8))
                .post(LIFTS + "?detail=full");

        assertThat(answer.statusCode()).isEqualTo(422);
    }
}
