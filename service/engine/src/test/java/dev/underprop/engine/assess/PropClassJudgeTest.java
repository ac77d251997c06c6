package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Props.judged;
import static dev.underprop.engine.assess.Props.reason;
import static dev.underprop.engine.assess.Props.refusal;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PropClass;
import dev.underprop.engine.plan.PropClass.Letter;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.section.RoundTube;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Props of named classes, worked by hand: strength at the length over 1.65; and which of several methods rules. */
class PropClassJudgeTest {

    private static final PropClass B35 = new PropClass(Letter.B, 3.5);
    private static final PostType.Rating NONE = new PostType.NotRated();

    /** 68·3.5/3² is 26.444, over 1.65 16.027 kN; at 2 m the class's own 51 rules. */
    @ParameterizedTest
    @CsvSource({
        "B, 3.5, 3.0, 16026.936", "B, 3.5, 2.0, 30909.091", "A, 4.0, 4.0, 7727.273",
        "C, 5.5, 5.5, 11239.669", "D, 5.5, 5.5, 20606.061", "E, 2.5, 2.5, 30909.091"
    })
    void capacity(Letter letter, double longest, double height, double expected) {
        assertThat(judged(PropClassJudge.judge(new PropClass(letter, longest), height, 100))
                        .capacity())
                .isCloseTo(expected, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({
        "B, 3.5, 3.51, beyond its full extension",
        "D, 3.5, 3.51, beyond its full extension",
        "A, 4.5, 3.00, no size",
        "B, 6.0, 3.00, no size",
        "C, 2.0, 1.90, no size",
        "E, 3.2, 3.00, no size"
    })
    void beyondItsRangeIsRefused(Letter letter, double longest, double height, String reason) {
        assertThat(refusal(PropClassJudge.judge(new PropClass(letter, longest), height, 1)))
                .contains(reason);
    }

    private static PostMethods.Ruling ruling(PostType.Rating rating, PostType.Tube tube, PostType.Shaft shaft) {
        PostType type = new PostType("type", rating, Props.PLATE, Props.PLATE, tube, B35, shaft);
        Post post = new Post("P", 0, 2.5, Post.Stiffness.exactly(Plans.RIGID), 0, 0, type, new Post.NoPad());
        return PostJudge.judge(post, 17_000, 0.5, 0, 1);
    }

    private static PostType.Table table(double load) {
        return new PostType.Table("test", 1, false, List.of(new PostType.Row(3.5, load)));
    }

    /** With the lift 3 m: the class gives 16.03 kN. */
    @Test
    void theLowestOfAllRulesAndIsNamed() {
        PostMethods.Ruling higher = ruling(table(20_000), new PostType.NoTube(), new PostType.NoShaft());
        assertThat(judged(higher.finding()).capacity()).isCloseTo(16026.936, within(0.001));
        assertThat(higher.rule().text()).startsWith("EN 1065 1998").endsWith("lower than by rating table");

        PostMethods.Ruling lower = ruling(table(15_000), new PostType.NoTube(), new PostType.NoShaft());
        assertThat(judged(lower.finding()).capacity()).isEqualTo(15_000);
        assertThat(lower.rule().text()).contains("rating table read").endsWith("lower than by class B35");

        PostType.Pipe thin = new PostType.Pipe(new RoundTube(0.0483, 0.0032), 235e6, 0.025, false);
        PostMethods.Ruling tube = ruling(NONE, thin, new PostType.NoShaft());
        assertThat(judged(tube.finding()).capacity()).isLessThan(10_000);
        assertThat(tube.rule().text()).startsWith("AISC 360-16");
    }

    /** What cannot be made is said beside what can. */
    @Test
    void anIncompleteMethodIsNamedAndDoesNotRule() {
        Member stick = new Member(
                "4x4", new RectangularSection(0.09, 0.09), 1, Plans.HEM_FIR_2, true, Member.Moisture.UNSTATED, 0);
        TimberPost post = new TimberPost(stick, 0, false, new TimberPost.Unjoined());
        PostMethods.Ruling ruling = ruling(NONE, new PostType.NoTube(), post);
        assertThat(judged(ruling.finding()).capacity()).isCloseTo(16026.936, within(0.001));
        assertThat(ruling.rule().text()).contains("not made: timber (the moisture");

        PostType alone = new PostType(
                "alone", NONE, Props.PLATE, Props.PLATE, new PostType.NoTube(), new PostType.NoClass(), post);
        assertThat(reason(PostMethods.rule(alone, 2, 1, 0, 1).finding())).contains("moisture");
        PostType nothing = new PostType("nothing", NONE, Props.PLATE, Props.PLATE);
        assertThat(reason(PostMethods.rule(nothing, 2, 1, 0, 1).finding())).contains("has no rating");
    }

    @Test
    void seventeenKilonewtonsFailAndSixteenPass() {
        assertThat(verdict(17_000)).isEqualTo(Verdict.FAIL);
        assertThat(verdict(16_000)).isEqualTo(Verdict.PASS);
    }

    private static Verdict verdict(double load) {
        return new CheckResult(
                        dev.underprop.engine.check.CheckId.POST_RATING,
                        "P",
                        PropClassJudge.judge(B35, 3, load),
                        new CheckResult.NoCase(),
                        PropClassJudge.RULE)
                .verdict();
    }
}
