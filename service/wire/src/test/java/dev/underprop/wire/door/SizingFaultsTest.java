package dev.underprop.wire.door;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.api.model.PadSizing;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.tree.Format;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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
