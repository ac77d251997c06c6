package dev.underprop.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.api.model.LiftExpected;
import dev.underprop.api.model.LiftPass;
import dev.underprop.api.model.LiftPlan;
import dev.underprop.api.model.LiftStage;
import dev.underprop.api.model.LiftTurn;
import dev.underprop.app.Demos;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.tree.Format;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LiftTextTest {

    private static LiftPlan plan(String demo) {
        byte[] text = Demos.text(demo).getBytes(StandardCharsets.UTF_8);
        Answer<LiftPlan> answer = new PlanDoor().lift(text, Format.YAML, AnswerOptions.USUAL);
        assertThat(answer).isInstanceOf(Answer.Judged.class);
        return ((Answer.Judged<LiftPlan>) answer).model();
    }

    private static String text(LiftPlan plan) {
        return new LiftText(new Paint(false)).of("plan.yaml", plan);
    }

    @Test
    void whoKeepsAwayAndWhenToStopStandBeforeAnyTurn() {
        String text = text(plan("lift-together.yaml"));

        assertThat(text.indexOf("Nobody under or above")).isPositive().isLessThan(text.indexOf("STOP RULES"));
        assertThat(text.indexOf("STOP RULES")).isLessThan(text.indexOf("NOT CHECKED"));
        assertThat(text.indexOf("NOT CHECKED")).isLessThan(text.indexOf("STAGE 1 of 4"));
        assertThat(text).contains("1/8 turn up.").contains("Hold 24 h.").contains("initials ____");
    }

    @ParameterizedTest
    @ValueSource(strings = {"lift-together.yaml", "lift-sinking-pad.yaml"})
    void everyTurnAndReadingOfThePlanIsInTheWords(String demo) {
        LiftPlan plan = plan(demo);
        String text = text(plan);
        int from = 0;
        for (LiftStage stage : plan.getStages()) {
            from = text.indexOf("STAGE " + stage.getNumber() + " of", from);
            assertThat(from).isPositive();
            for (LiftPass pass : stage.getPasses()) {
                for (LiftTurn turn : pass.getTurns()) {
                    from = text.indexOf(turn.getPost() + ", " + turn.getWords(), from + 1);
                    assertThat(from).as(turn.toString()).isPositive();
                }
            }
            for (LiftExpected level : stage.getLevels()) {
                from = text.indexOf(level.getAt() + " ", from + 1);
                assertThat(from).as(level.toString()).isPositive();
            }
        }
    }

    @Test
    void anImpossibleLiftShowsNoTurnAndSaysWhatHelps() {
        String text = text(plan("lift-hopeless.yaml"));

        assertThat(text)
                .startsWith("lift-hopeless  Four inches at once  (plan.yaml)\nIMPOSSIBLE\n  Do not begin")
                .contains("WHAT STOPS IT")
                .contains("What would help")
                .doesNotContain("STAGE");
    }

    @Test
    void linesFitAPage() {
        assertThat(text(plan("lift-together.yaml")).lines())
                .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(112));
    }
}
