package dev.underprop.wire.door;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.tree.Format;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each row of the table breaks a good plan in one way and finds that fault, there, and no other. */
class FaultsTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final PlanDoor DOOR = new PlanDoor();

    record Row(String plan, String edits, String code, String pointer) {
        static Row of(String line) {
            String[] fields = (line + " ").split(" \\| ");
            assertThat(fields).as(line).hasSize(4);
            return new Row(fields[0], fields[1], fields[2], fields[3].strip());
        }

        JsonNode broken() throws IOException {
            JsonNode root = JSON.readTree(Plans.bytes(plan + ".json"));
            for (String edit : edits.split(" ;; ")) {
                if (edit.endsWith(" -")) {
                    change(root, edit.substring(0, edit.length() - 2), "");
                } else {
                    change(root, edit.substring(0, edit.indexOf(" = ")), edit.substring(edit.indexOf(" = ") + 3));
                }
            }
            return root;
        }

        private static void change(JsonNode root, String pointer, String json) throws IOException {
            JsonPointer at = JsonPointer.compile(pointer);
            JsonNode holder = root.at(at.head());
            String name = at.last().getMatchingProperty();
            if (json.isEmpty()) {
                assertThat(((ObjectNode) holder).remove(name)).as(pointer).isNotNull();
            } else if (holder instanceof ArrayNode list) {
                list.set(at.last().getMatchingIndex(), JSON.readTree(json));
            } else {
                ((ObjectNode) holder).set(name, JSON.readTree(json));
            }
        }
    }

    static Stream<Row> rows() {
        return Plans.text("faults.txt")
                .lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(Row::of);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void isFoundAtItsPlaceAndAlone(Row row) throws IOException {
        byte[] text = JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(row.broken());
        Answer<PlanCheck> answer = DOOR.check(text, Format.JSON, AnswerOptions.USUAL);
        assertThat(answer).isInstanceOf(Answer.Faulty.class);
        List<Fault> faults = ((Answer.Faulty<PlanCheck>) answer).faults();
        assertThat(faults)
                .extracting(fault -> fault.code() + " at " + fault.pointer())
                .containsExactly(row.code() + " at " + row.pointer());
        assertThat(faults.get(0).line()).isPositive();
        assertThat(faults.get(0).column()).isPositive();
        assertThat(faults.get(0).detail()).endsWith(".");
        assertThat(faults.get(0).remedy()).matches(".+[.?]");
    }

    @Test
    void theTableHoldsEveryCodeOfLimitsAndMeaning() {
        Set<String> covered =
                Stream.concat(rows(), SizingFaultsTest.rows()).map(Row::code).collect(Collectors.toSet());
        List<String> wanted = Arrays.stream(Messages.values())
                .filter(message -> message.compareTo(Messages.MEMBER_MISSING) >= 0)
                .map(Messages::code)
                .distinct()
                .toList();
        // A plan without any joist breaks everything that rests on joists, so it has a test of its own.
        assertThat(wanted).filteredOn(code -> !covered.contains(code)).containsExactly("no-joists");
    }

    @Test
    void noJoistsAtAll() {
        String text = Plans.text("two-bays.json").replace("\"count\": 13,", "").replace("\"spacing\": \"16 in\",", "");
        Answer<PlanCheck> answer =
                DOOR.check(text.getBytes(java.nio.charset.StandardCharsets.UTF_8), Format.JSON, AnswerOptions.USUAL);
        assertThat(((Answer.Faulty<PlanCheck>) answer).faults())
                .extracting(Fault::code)
                .contains("no-joists");
    }

    @Test
    void allFaultsOfAStepComeTogetherInTheOrderOfTheText() {
        Answer<PlanCheck> answer = DOOR.check(Plans.bytes("broken.json"), Format.JSON, AnswerOptions.USUAL);
        List<Fault> faults = ((Answer.Faulty<PlanCheck>) answer).faults();
        assertThat(faults)
                .extracting(Fault::pointer)
                .containsExactly("/floor/joists/spacing", "/shores/0/posts/0/height", "/shores/0/posts/0/pad");
        assertThat(faults).extracting(Fault::code).containsExactly("unit-missing", "wrong-dimension", "name-unknown");
        assertThat(faults.get(2).remedy()).isEqualTo("Did you mean cast?");
        String[] lines = Plans.text("broken.json").split("\n");
        assertThat(lines[faults.get(0).line() - 1]).contains("\"spacing\": \"24\"");
        assertThat(lines[faults.get(1).line() - 1]).contains("8 kip");
        assertThat(lines[faults.get(2).line() - 1]).contains("casst");
    }

    @Test
    void aStepIsFinishedBeforeTheNextBegins() {
        String text = Plans.text("broken.json").replace("\"plies\": 3", "\"plies\": 9");
        Answer<PlanCheck> answer =
                DOOR.check(text.getBytes(java.nio.charset.StandardCharsets.UTF_8), Format.JSON, AnswerOptions.USUAL);
        assertThat(((Answer.Faulty<PlanCheck>) answer).faults())
                .extracting(Fault::code)
                .containsExactly("number-too-large");
    }

    @Test
    void aFaultOfTheJoistSetIsToldOnce() {
        String text = Plans.text("carriage-house.json").replace("\"2x10\"", "\"2x99\"");
        Answer<PlanCheck> answer =
                DOOR.check(text.getBytes(java.nio.charset.StandardCharsets.UTF_8), Format.JSON, AnswerOptions.USUAL);
        assertThat(((Answer.Faulty<PlanCheck>) answer).faults())
                .extracting(Fault::pointer)
                .containsExactly("/floor/joists/size", "/shores/0/beam/size");
    }
}
