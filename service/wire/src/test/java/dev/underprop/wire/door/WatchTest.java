package dev.underprop.wire.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.underprop.engine.Halted;
import dev.underprop.wire.door.Watch.Stage;
import dev.underprop.wire.tree.Format;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whoever watches an answer is told of its stages and can give it up; watching changes nothing. */
class WatchTest {
    private static final PlanDoor DOOR = new PlanDoor();

    private interface Asked {
        Answer<?> ask(byte[] text, Format format, AnswerOptions options, Watch watch);
    }

    /** Notes stages, counts how often it is asked, and is over after so many times. */
    private static final class Told implements Watch {
        private final List<Stage> stages = new ArrayList<>();
        private final int most;
        private int asked;

        Told(int most) {
            this.most = most;
        }

        @Override
        public void begins(Stage stage) {
            stages.add(stage);
        }

        @Override
        public boolean isOver() {
            return ++asked > most;
        }
    }

    private static Told watched(Asked door, String name) {
        Told told = new Told(Integer.MAX_VALUE);
        Answer<?> answer = door.ask(Plans.bytes(name), Format.JSON, AnswerOptions.USUAL, told);
        assertThat(answer).isInstanceOf(Answer.Judged.class);
        return told;
    }

    @Test
    void everyQuestionTellsItsStages() {
        assertThat(watched(DOOR::check, "raised.json").stages).containsExactly(Stage.PARSE, Stage.SOLVE, Stage.WRITE);
        assertThat(watched(DOOR::analyse, "raised.json").stages).containsExactly(Stage.PARSE, Stage.SOLVE, Stage.WRITE);
        assertThat(watched(DOOR::lift, "raised.json").stages).containsExactly(Stage.PARSE, Stage.SOLVE, Stage.WRITE);
        assertThat(watched(DOOR::sizePads, "sizing.json").stages)
                .containsExactly(Stage.PARSE, Stage.SOLVE, Stage.WRITE);
    }

    @Test
    void whatCannotBeReadIsNotSolved() {
        Told told = new Told(0);

        DOOR.check("{}".getBytes(StandardCharsets.UTF_8), Format.JSON, AnswerOptions.USUAL, told);

        assertThat(told.stages).containsExactly(Stage.PARSE);
        assertThat(told.asked).isZero();
    }

    @Test
    void everyQuestionIsGivenUpWhenItIsOver() {
        assertGivenUp(DOOR::check, "raised.json");
        assertGivenUp(DOOR::analyse, "raised.json");
        assertGivenUp(DOOR::lift, "raised.json");
        assertGivenUp(DOOR::sizePads, "sizing.json");
    }

    /** At once, and half way: it is asked at least that often. */
    private static void assertGivenUp(Asked door, String name) {
        int whole = watched(door, name).asked;
        assertThat(whole).isGreaterThan(2);
        for (int most : new int[] {0, whole / 2, whole - 1}) {
            Told told = new Told(most);
            assertThatThrownBy(() -> door.ask(Plans.bytes(name), Format.JSON, AnswerOptions.USUAL, told))
                    .isInstanceOf(Halted.class);
            assertThat(told.asked).isEqualTo(most + 1);
        }
    }

    @Test
    void watchingChangesNothing() {
        Answer.Judged<?> watched = (Answer.Judged<?>)
                DOOR.check(Plans.bytes("raised.json"), Format.JSON, AnswerOptions.USUAL, new Told(Integer.MAX_VALUE));
        Answer.Judged<?> alone =
                (Answer.Judged<?>) DOOR.check(Plans.bytes("raised.json"), Format.JSON, AnswerOptions.USUAL);

        assertThat(Documents.json(watched.model(), false)).isEqualTo(Documents.json(alone.model(), false));
    }
}
