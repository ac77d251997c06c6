package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.app.Demos;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.tree.Format;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class TrialTest {

    @Test
    void theDoorIsThereOnceItsTrialWasJudgedAndIsTheSameForAll() {
        Trial trial = Trial.begin();
        PlanDoor door = trial.get();

        assertThat(trial.get()).isSameAs(door);
        assertThat(door.check(
                        Demos.text("two-spans.yaml").getBytes(StandardCharsets.UTF_8),
                        Format.YAML,
                        AnswerOptions.USUAL))
                .isInstanceOf(Answer.Judged.class);
    }
}
