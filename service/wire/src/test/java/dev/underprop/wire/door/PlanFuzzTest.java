package dev.underprop.wire.door;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.wire.quantity.Dimension;
import dev.underprop.wire.quantity.Quantity;
import dev.underprop.wire.quantity.QuantityReading;
import dev.underprop.wire.tree.Format;
import java.nio.charset.StandardCharsets;

/**
 * Inputs that are led by what they reach in the code. As a test it tries the inputs that are kept beside the resources; .ci/long and
 * .ci/run look for new ones. Whatever is thrown is a defect.
 */
class PlanFuzzTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final PlanDoor DOOR = new PlanDoor();

    @FuzzTest
    void json(byte[] text) {
        judge(text, Format.JSON);
    }

    @FuzzTest
    void yaml(byte[] text) {
        judge(text, Format.YAML);
    }

    /** The first byte says what is measured. */
    @FuzzTest
    void quantity(byte[] bytes) {
        if (bytes.length == 0) {
            return;
        }
        Dimension[] dimensions = Dimension.values();
        Dimension dimension = dimensions[(bytes[0] & 0xff) % dimensions.length];
        String text = new String(bytes, 1, bytes.length - 1, StandardCharsets.UTF_8);
        if (Quantity.parse(text, dimension) instanceof QuantityReading.Value value) {
            assertThat(value.si()).isFinite();
        }
    }

    /** Plans of the right shape, made from bytes, so that the fuzzer gets past the reader. */
    @FuzzTest
    void plan(byte[] draws) throws JsonProcessingException {
        judge(JSON.writeValueAsBytes(ChancePlan.of(new ByteDraws(draws))), Format.JSON);
    }

    private static void judge(byte[] text, Format format) {
        Answer<PlanCheck> answer = DOOR.check(text, format, AnswerOptions.USUAL);
        if (answer instanceof Answer.Judged<PlanCheck> judged) {
            assertThat(Documents.json(judged.model(), false)).isNotEmpty();
        } else if (answer instanceof Answer.Faulty<PlanCheck> faulty) {
            assertThat(faulty.faults()).isNotEmpty();
        } else {
            assertThat(((Answer.Unreadable<PlanCheck>) answer).faults()).isNotEmpty();
        }
    }
}
