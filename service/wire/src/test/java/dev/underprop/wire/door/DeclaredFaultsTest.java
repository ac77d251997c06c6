package dev.underprop.wire.door;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.tree.Format;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A plan that says everything is read without a fault, and every object of it is closed. */
class DeclaredFaultsTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final PlanDoor DOOR = new PlanDoor();

    @ParameterizedTest
    @ValueSource(strings = {"declared.json", "declared.yaml"})
    void everythingDeclaredIsJudged(String name) {
        Format format = name.endsWith(".json") ? Format.JSON : Format.YAML;
        assertThat(DOOR.check(Plans.bytes(name), format, AnswerOptions.USUAL)).isInstanceOf(Answer.Judged.class);
    }

    @Test
    void noObjectTakesAMemberThatIsNotDescribed() throws IOException {
        List<String> places = new ArrayList<>();
        collect(JSON.readTree(Plans.bytes("declared.json")), "", places);
        assertThat(places)
                .hasSizeGreaterThan(80)
                .contains("/floor/bearings/1/piers/0", "/lateral", "/lateral/forces/0", "/excavation", "/limits")
                .contains("/excavation/cuts/0", "/intake/0", "/shores/0/heads", "/shores/0/heads/along", "/restraint")
                .contains("/shores/0/posts/1/head", "/situations/3/removedParts/0");
        for (String place : places) {
            JsonNode plan = JSON.readTree(Plans.bytes("declared.json"));
            ((ObjectNode) plan.at(place)).put("strangeThing", "1 ft");
            assertThat(faults(JSON.writeValueAsString(plan)))
                    .extracting(fault -> fault.code() + " " + fault.pointer())
                    .containsExactly("unknown-member " + place + "/strangeThing");
        }
    }

    private static void collect(JsonNode node, String place, List<String> places) {
        if (node.isObject()) {
            places.add(place);
        }
        node.properties().forEach(member -> collect(member.getValue(), place + "/" + member.getKey(), places));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            collect(node.get(i), place + "/" + i, places);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "'\"question\": \"chimney\"', '\"question\": \"chimny\"', Did you mean chimney?",
        "'\"removed\": [\"jack post\"]', '\"removed\": [\"jack pst\"]', Did you mean jack post?",
        "'\"capacity\": \"3 kip\"', '\"capacty\": \"3 kip\"', Did you mean capacity?",
        "'\"load\": \"roof post\"', '\"load\": \"roof posts\"', Did you mean roof post?",
        "'\"bearing\": \"front\"', '\"bearing\": \"girder\"', 'Remove piers of the girder instead, or the whole girder.'"
    })
    void theRemedyNamesWhatWasMeant(String right, String wrong, String remedy) {
        String text = Plans.text("declared.json");
        assertThat(text).contains(right);
        assertThat(faults(text.replace(right, wrong)))
                .singleElement()
                .extracting(Fault::remedy)
                .isEqualTo(remedy);
    }

    @Test
    void faultsOfTheWholeAndOfWhatIsLeftComeTogether() {
        String text = Plans.text("declared.json")
                .replace("\"size\": \"2x8\", \"species\"", "\"size\": \"2x99\", \"species\"")
                .replace("\"netDepth\": \"6 in\"", "\"netDepth\": \"6\"");
        assertThat(faults(text))
                .extracting(fault -> fault.code() + " " + fault.pointer())
                .containsExactly("size-unknown /floor/joists/size", "unit-missing /floor/joists/each/0/netDepth");
    }

    private static List<Fault> faults(String text) {
        Answer<PlanCheck> answer = DOOR.check(text.getBytes(StandardCharsets.UTF_8), Format.JSON, AnswerOptions.USUAL);
        assertThat(answer).isInstanceOf(Answer.Faulty.class);
        return ((Answer.Faulty<PlanCheck>) answer).faults();
    }
}
