package dev.underprop.wire.door;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.api.model.LayoutAnalysis;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.quantity.UnitSystem;
import dev.underprop.wire.tree.Format;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever stands in a readable plan, an answer or faults come out, never an exception. */
class AnyPlanTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final PlanDoor DOOR = new PlanDoor();

    @ParameterizedTest(name = "{0}, seed {1}, {2} mutants")
    @CsvSource({"carriage-house.json, 1, 120", "two-bays.json, 2, 300", "old-house.json, 3, 40", "declared.json, 4, 120"
    })
    void neverThrows(String name, long seed, int mutants) throws IOException {
        JsonNode plan = JSON.readTree(Plans.bytes(name));
        Mutator mutator = new Mutator(seed);
        List<String> broken = new ArrayList<>();
        int judged = 0;
        for (int i = 0; i < mutants; i++) {
            JsonNode mutant = mutator.mutant(plan);
            try {
                judged += judge(JSON.writeValueAsBytes(mutant), i) ? 1 : 0;
            } catch (RuntimeException e) {
                broken.add("mutant " + i + ": " + e + " at " + e.getStackTrace()[0] + "\n" + mutant);
            }
        }
        assertThat(broken).isEmpty();
        assertThat(judged).as("mutants that could be judged").isGreaterThan(mutants / 20);
    }

    private static boolean judge(byte[] text, int i) {
        Format format = i % 2 == 0 ? Format.JSON : Format.YAML;
        AnswerOptions options = new AnswerOptions(
                i % 3 == 0 ? UnitSystem.SI : UnitSystem.US,
                i % 5 == 0 ? AnswerOptions.Detail.FULL : AnswerOptions.Detail.COMPACT,
                i % 4 < 2);
        Answer<LayoutAnalysis> answer = DOOR.analyse(text, format, options);
        if (answer instanceof Answer.Judged<LayoutAnalysis> judged) {
            assertThat(Documents.json(judged.model(), false)).isNotEmpty();
            return true;
        }
        List<Fault> faults = answer instanceof Answer.Faulty<LayoutAnalysis> faulty
                ? faulty.faults()
                : ((Answer.Unreadable<LayoutAnalysis>) answer).faults();
        assertThat(faults).isNotEmpty();
        return false;
    }
}
