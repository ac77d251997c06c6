package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.underprop.app.Demos;
import io.restassured.response.Response;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** Pads proposed for a plan, pasted into it and checked: every check of a pad passes, with the ratio that was promised. */
@ExtendWith(RunningService.class)
class PadsPastedHttpTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static JsonNode plan(double dead, double live) {
        Object tree = new Yaml(new SafeConstructor(new LoaderOptions())).load(Demos.text("adequate.yaml"));
        ObjectNode plan = JSON.valueToTree(tree);
        ObjectNode floor = (ObjectNode) plan.at("/floor/loads/0");
        floor.put("dead", Math.round(dead) + " psf").put("live", Math.round(live) + " psf");
        return plan;
    }

    private static Response post(String path, JsonNode body) throws IOException {
        Response answer = Client.right()
                .contentType("application/json")
                .body(JSON.writeValueAsBytes(body))
                .post(path);
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(200);
        return answer;
    }

    @ParameterizedTest
    @CsvSource({"1, area", "2, area", "3, weight", "4, weight", "5, cost", "6, area"})
    void pass(long seed, String objective) throws IOException {
        Random random = new Random(seed);
        JsonNode plan = plan(8 + 30 * random.nextDouble(), 20 + 60 * random.nextDouble());
        ObjectNode request = JSON.createObjectNode().put("objective", objective);
        request.set("plan", plan);
        request.set("stock", JSON.readTree("""
                [{"pad":{"name":"cast","kind":"concrete","make":"cast","along":"12 in","across":"12 in","thickness":"8 in","strength":"3000 psi","centring":"1/2 in"},"price":4,
                  "grow":{"side":"36 in","step":"1 in","thickness":"16 in","thicknessStep":"2 in"}},
                 {"pad":{"name":"mat","kind":"timber","along":"18 in","across":"22.5 in","thickness":"5 in","unitWeight":"35 pcf","centring":"1/4 in","mat":{"run":"along","sleepers":2,"bearers":1,"breadth":"2.5 in","depth":"11.25 in","species":"douglas fir-larch","grade":"No.1","treatment":"none","plate":{"along":"8 in","across":"8 in","thickness":"1/2 in","yieldStress":"36 ksi"}}},"price":20,
                  "grow":{"side":"36 in","step":"3 in","sleepers":4}}]"""));
        JsonNode sizing =
                JSON.readTree(post("/v1/pad-sizings?detail=full", request).asByteArray());
        assertThat(sizing.path("state").asText())
                .as(sizing.path("headline").asText())
                .isEqualTo("ADEQUATE");
        assertThat(sizing.at("/verification/stays").asBoolean()).isTrue();

        JsonNode checked = JSON.readTree(
                post("/v1/plan-checks?detail=full", pasted(plan, sizing)).asByteArray());

        int compared = 0;
        for (JsonNode post : sizing.path("posts")) {
            for (JsonNode promised : post.at("/proposals/0/checks")) {
                String id = promised.path("check").asText();
                for (JsonNode found : checked.path("checks")) {
                    boolean same = found.path("check").asText().equals(id)
                            && found.path("place")
                                    .asText()
                                    .equals(post.path("post").asText());
                    if (same) {
                        compared++;
                        assertThat(found.path("verdict").asText())
                                .as(found.toString())
                                .isEqualTo("PASS");
                        assertThat(found.path("ratio").asDouble())
                                .as(id)
                                .isCloseTo(promised.path("ratio").asDouble(), within(1e-6));
                    }
                }
            }
        }
        // Six of the seven checks are required where no bearing is taken out, at three posts.
        assertThat(compared).isEqualTo(18);
    }

    /** Asked for inside the plan, the same pads are told beside the verdict. */
    @Test
    void insideAPlanCheck() throws IOException {
        ObjectNode plan = (ObjectNode) plan(10, 40);
        ObjectNode request = JSON.createObjectNode().put("objective", "area");
        request.set("plan", plan);
        JsonNode alone = JSON.readTree(post("/v1/pad-sizings", request).asByteArray());

        ObjectNode asking = plan.deepCopy();
        asking.set("sizing", JSON.createObjectNode().put("objective", "area"));
        JsonNode checked = JSON.readTree(post("/v1/plan-checks", asking).asByteArray());

        assertThat(checked.path("verdict").asText()).isEqualTo("ADEQUATE");
        assertThat(alone.path("state").asText()).isEqualTo("ADEQUATE");
        assertThat(checked.at("/sizing/posts")).isEqualTo(alone.path("posts"));
        assertThat(checked.at("/sizing/headline")).isEqualTo(alone.path("headline"));
    }

    /** The plan with its pads replaced by the proposed ones, word by word. */
    private static JsonNode pasted(JsonNode plan, JsonNode sizing) {
        ObjectNode pasted = plan.deepCopy();
        Map<String, JsonNode> pads = new LinkedHashMap<>();
        ArrayNode posts = (ArrayNode) pasted.at("/shores/0/posts");
        for (int i = 0; i < posts.size(); i++) {
            JsonNode pad = sizing.at("/posts/" + i + "/proposals/0/pad");
            assertThat(sizing.at("/posts/" + i + "/post"))
                    .isEqualTo(posts.get(i).get("name"));
            pads.put(pad.path("name").asText(), pad);
            ((ObjectNode) posts.get(i)).set("pad", pad.get("name"));
        }
        pasted.set("pads", JSON.valueToTree(pads.values()));
        return pasted;
    }
}
