package dev.underprop.wire.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.underprop.api.model.PadSizing;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.quantity.UnitSystem;
import dev.underprop.wire.tree.Format;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Each row of the table breaks a good request for pads in one way and finds that fault, there, and no other. */
class SizingFaultsTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final PlanDoor DOOR = new PlanDoor();

    static Stream<FaultsTest.Row> rows() {
        return Plans.text("sizing-faults.txt")
                .lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(FaultsTest.Row::of);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void isFoundAtItsPlaceAndAlone(FaultsTest.Row row) throws IOException {
        byte[] text = JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(row.broken());
        Answer<PadSizing> answer = DOOR.sizePads(text, Format.JSON, AnswerOptions.USUAL);
        assertThat(answer).isInstanceOf(Answer.Faulty.class);
        List<Fault> faults = ((Answer.Faulty<PadSizing>) answer).faults();
        assertThat(faults)
                .extracting(fault -> fault.code() + " at " + fault.pointer())
                .containsExactly(row.code() + " at " + row.pointer());
        assertThat(faults.get(0).detail()).endsWith(".");
        assertThat(faults.get(0).remedy()).matches(".+[.?]");
    }

    @Test
    void theRequestsThemselvesAreAnswered() {
        for (String name : List.of("sizing.json", "sizing-plan.json")) {
            assertThat(DOOR.sizePads(Plans.bytes(name), Format.JSON, AnswerOptions.USUAL))
                    .as(name)
                    .isInstanceOf(Answer.Judged.class);
        }
    }

    /** One soil, three tables, three values: 2000 psf, 2000 psf of the other code, 150 kPa; NAVFAC the least of 1 to 2 tsf. */
    @ParameterizedTest
    @CsvSource({
        "ibc-1806.2, silty sand, 95.7605, 1e-3",
        "irc-r401.4.1, silty sand, 95.7605, 1e-3",
        "is-1904, fine sand/silt, 150, 1e-9",
        "navfac-dm-7.02, fine-medium or silty sand loose, 95.7605, 1e-3"
    })
    void everyTableCanBeNamed(String table, String soil, double kPa, double tolerance) throws IOException {
        ObjectNode request = (ObjectNode) JSON.readTree(Plans.bytes("sizing.json"));
        request.set(
                "ground",
                JSON.createObjectNode()
                        .put("table", table)
                        .put("class", soil)
                        .put("foundingDepth", "12 in")
                        .put("condition", "undisturbed"));
        Answer<PadSizing> answer = DOOR.sizePads(
                JSON.writeValueAsBytes(request),
                Format.JSON,
                new AnswerOptions(UnitSystem.SI, AnswerOptions.Detail.COMPACT));
        PadSizing sizing = ((Answer.Judged<PadSizing>) answer).model();
        assertThat(sizing.getPosts().get(0).getHandCheck().getPressure().getValue())
                .isCloseTo(kPa, within(tolerance));
    }

    @Test
    void theSameRequestGivesTheSameBytes() {
        byte[] once = bytes(new PlanDoor());
        byte[] again = bytes(new PlanDoor());

        assertThat(again).isEqualTo(once);
    }

    private static byte[] bytes(PlanDoor door) {
        Answer<PadSizing> answer = door.sizePads(Plans.bytes("sizing.json"), Format.JSON, AnswerOptions.USUAL);
        return Documents.json(((Answer.Judged<PadSizing>) answer).model(), false);
    }
}
