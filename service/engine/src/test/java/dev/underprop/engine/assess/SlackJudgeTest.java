package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.plan.Post;
import org.junit.jupiter.api.Test;

/** Posts that carry nothing in some case. */
class SlackJudgeTest {

    private static final Post.End LOOSE = new Post.Unfastened();
    private static final Post.End SILENT = new Post.Undeclared();
    private static final Post.End HELD = new Post.Fastened("two screws", Double.NaN);

    private static Finding slack(Post.End head, Post.End foot) {
        return SlackJudge.judge(new Post.Ends(head, foot), true, 0);
    }

    @Test
    void onePressedInEveryCasePassesHoweverItIsHeld() {
        assertThat(SlackJudge.judge(Post.Ends.UNDECLARED, false, 500))
                .isInstanceOfSatisfying(CheckResult.Condition.class, condition -> {
                    assertThat(condition.met()).isTrue();
                    assertThat(condition.value()).isEqualTo(500);
                });
    }

    @Test
    void aSlackOnePassesOnlyFastenedAtBothEnds() {
        assertThat(slack(HELD, HELD))
                .isInstanceOfSatisfying(
                        CheckResult.Condition.class,
                        one -> assertThat(one.met()).isTrue());
        assertThat(slack(LOOSE, HELD))
                .isInstanceOfSatisfying(
                        CheckResult.Condition.class,
                        one -> assertThat(one.met()).isFalse());
    }

    @Test
    void oneKnownToBeLooseFailsWhateverIsNotSaidOfItsOtherEnd() {
        assertThat(slack(SILENT, LOOSE))
                .isInstanceOfSatisfying(
                        CheckResult.Condition.class,
                        one -> assertThat(one.met()).isFalse());
    }

    @Test
    void whatIsNotDeclaredIsNamed() {
        assertThat(Props.reason(slack(SILENT, SILENT))).contains("(declare: head)", "(declare: foot)");
        assertThat(Props.reason(slack(HELD, SILENT)))
                .contains("(declare: foot)")
                .doesNotContain("head");
        assertThat(Props.reason(slack(SILENT, HELD)))
                .contains("(declare: head)")
                .doesNotContain("foot");
    }
}
