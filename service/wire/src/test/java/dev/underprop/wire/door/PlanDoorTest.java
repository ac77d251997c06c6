package dev.underprop.wire.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.api.model.LayoutAnalysis;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.wire.tree.Format;
import org.junit.jupiter.api.Test;

class PlanDoorTest {
    private static final PlanDoor DOOR = new PlanDoor();

    @Test
    void middlePostOfTwoEqualBaysTakesTenEighths() {
        LayoutAnalysis answer = analysis("two-bays.json", AnswerOptions.USUAL);
        var posts = answer.getSituations().get(0).getPosts();
        assertThat(posts.get(0).getGreatest().getValue()).isCloseTo(1500, within(1e-6));
        assertThat(posts.get(1).getGreatest().getValue()).isCloseTo(5000, within(1e-6));
        assertThat(posts.get(1).getHandCheck().getValue()).isCloseTo(4000, within(1e-6));
        assertThat(posts.get(1).getGreatest().getUnit()).isEqualTo("lb");
    }

    @Test
    void carriageHouseFailsWhenItsSillGoes() {
        LayoutAnalysis answer = analysis("carriage-house.json", AnswerOptions.USUAL);
        assertThat(answer.getVerdict()).isEqualTo(PlanVerdict.INADEQUATE);
        assertThat(answer.getHeadline())
                .contains("movement when a bearing is taken away at rear sill")
                .contains("sill out")
                .contains("checks were not made");
    }

    static LayoutAnalysis analysis(String name, AnswerOptions options) {
        Answer<LayoutAnalysis> answer = DOOR.analyse(Plans.bytes(name), Format.JSON, options);
        assertThat(answer).isInstanceOf(Answer.Judged.class);
        return ((Answer.Judged<LayoutAnalysis>) answer).model();
    }
}
