package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.response.Response;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Lifts drawn by seed, planned over HTTP; each turn is then a situation of its plan, asked for as a layout over HTTP. */
@ExtendWith(RunningService.class)
class LiftReplayTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int LIFTS = 20;
    private static final double RIGHT = 1 + 1e-6;

    private int turns;

    @Test
    void turnByTurnTheLayoutsKeepWhatTheLiftPromised() throws IOException {
        int lifts = 0;
        for (long seed = 1; lifts < LIFTS && seed < 200; seed++) {
            DrawnLift drawn = new DrawnLift(seed);
            String text = drawn.text();
            JsonNode plan = answered("/v1/lift-plans", text, seed);
            if (!plan.get("stages").isEmpty()) {
                lifts++;
                replay(drawn, text, plan, seed);
            }
        }
        System.out.println(lifts + " lifts replayed over HTTP, " + turns + " turns");
        assertThat(lifts).isEqualTo(LIFTS);
        assertThat(turns).isGreaterThan(LIFTS);
    }

    private static JsonNode answered(String path, String text, long seed) throws IOException {
        Response answer = Client.postYaml(path, text);
        assertThat(answer.statusCode())
                .as("seed %d: %s", seed, answer.asString())
                .isEqualTo(200);
        return JSON.readTree(answer.asByteArray());
    }

    private void replay(DrawnLift drawn, String text, JsonNode plan, long seed) throws IOException {
        Map<String, Double> raised = new LinkedHashMap<>();
        drawn.posts().forEach(post -> raised.put(post, 0.0));
        List<JsonNode> all = new ArrayList<>();
        List<Integer> stageEnds = new ArrayList<>();
        StringBuilder situations = new StringBuilder("  - { name: begins, removed: [sill] }\n");
        for (JsonNode stage : plan.get("stages")) {
            for (JsonNode pass : stage.get("passes")) {
                for (JsonNode turn : pass.get("turns")) {
                    raised.merge(
                            turn.get("post").asText(), turn.at("/raise/value").asDouble(), Double::sum);
                    all.add(turn);
                    situations.append(situation(all.size(), raised));
                }
            }
            stageEnds.add(all.size());
        }
        turns += all.size();
        for (JsonNode post : plan.get("posts")) {
            assertThat(raised.get(post.get("post").asText()))
                    .as("seed %d", seed)
                    .isCloseTo(post.at("/planned/value").asDouble(), within(1e-6));
            assertThat(Math.abs(post.at("/left/value").asDouble())).isLessThanOrEqualTo(0.25 * 0.125 / 2 + 1e-6);
        }
        String asked = text.replace("situations:\n", "situations:\n" + situations);
        JsonNode layouts = answered("/v1/layout-analyses", asked, seed).get("situations");
        hold(drawn, layouts, all, stageEnds, seed);
    }

    private static String situation(int number, Map<String, Double> raised) {
        List<String> lifts = new ArrayList<>();
        raised.forEach((post, raise) -> lifts.add("{ post: " + post + ", lift: '" + raise + " in' }"));
        return "  - { name: turn " + number + ", removed: [sill], lifts: [" + String.join(", ", lifts) + "] }\n";
    }

    private static void hold(
            DrawnLift drawn, JsonNode layouts, List<JsonNode> turns, List<Integer> stageEnds, long seed) {
        for (int k = 1; k <= turns.size(); k++) {
            JsonNode layout = layouts.get(k);
            String where = "seed " + seed + ", " + layout.get("name").asText();
            assertThat(layout.get("state").asText()).as(where).isEqualTo("STABLE");
            boolean patternsToo = !drawn.live() || stageEnds.contains(k);
            for (int p = 0; p < drawn.posts().size(); p++) {
                double load = layout.at("/posts/" + p + "/asFound/value").asDouble();
                double before = layouts.get(patternsToo && drawn.live() ? endBefore(stageEnds, k) : k - 1)
                        .at("/posts/" + p + "/asFound/value")
                        .asDouble();
                if (patternsToo) {
                    assertThat(load)
                            .as(where + ", post " + drawn.posts().get(p))
                            .isLessThanOrEqualTo(Math.max(drawn.rating(), before) * RIGHT);
                }
                JsonNode turn = turns.get(k - 1);
                if (turn.get("post").asText().equals(drawn.posts().get(p))) {
                    double told = turn.at("/loadAfter/greatest").asDouble();
                    assertThat(load).as(where).isGreaterThanOrEqualTo(told / RIGHT - 0.01);
                    if (!drawn.live()) {
                        assertThat(load).as(where).isCloseTo(told, within(0.01 + 1e-6 * told));
                    }
                }
            }
            for (JsonNode contact : layout.get("contacts")) {
                if (contact.get("place").asText().endsWith("far wall")) {
                    assertThat(contact.get("state").asText())
                            .as(where + ", " + contact.get("place").asText())
                            .isEqualTo("CLOSED");
                }
            }
        }
    }

    private static int endBefore(List<Integer> stageEnds, int end) {
        int before = stageEnds.indexOf(end) - 1;
        return before < 0 ? 0 : stageEnds.get(before);
    }
}
