package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Props.judged;
import static dev.underprop.engine.assess.Props.reason;
import static dev.underprop.engine.assess.Props.refusal;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PostType.Pipe;
import dev.underprop.engine.plan.Telescope;
import dev.underprop.engine.plan.TimberPost;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.section.RoundTube;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tubes as posts; capacities worked out apart from this code. */
class PipeJudgeTest {

    private static final PostType.Table TABLE =
            new PostType.Table("test", 1, false, List.of(new PostType.Row(2, 60_000), new PostType.Row(3, 20_000)));

    private static Pipe pipe(double diameter, double wall, double off, boolean plain) {
        return new Pipe(new RoundTube(diameter, wall), 235e6, off, plain);
    }

    /** Outside, wall, height, off the middle (m), capacity (N): the last by buckling alone, E3. */
    @ParameterizedTest
    @CsvSource({
        "0.0603, 0.004, 2.5, 0.025, 23121.5588",
        "0.0889, 0.004, 2.0, 0.025, 65270.4288",
        "0.0400, 0.004, 2.4, 0.100, 4174.9161",
        "0.0603, 0.004, 2.5, 0, 45533.1118"
    })
    void capacity(double diameter, double wall, double height, double off, double expected) {
        Finding finding = PipeJudge.judge(pipe(diameter, wall, off, true), height, 1000);

        assertThat(judged(finding).capacity()).isCloseTo(expected, within(0.001));
        assertThat(judged(finding).demand()).isEqualTo(1000);
    }

    /** r of 40 mm by 4 mm is 12.806 mm: 200 r is 2.561 m. Walls: 0.07 E/Fy is 59.6. */
    @Test
    void tooSlenderOrTooThinIsRefused() {
        assertThat(refusal(PipeJudge.judge(pipe(0.04, 0.004, 0, true), 2.57, 1)))
                .contains("beyond 200");
        assertThat(judged(PipeJudge.judge(pipe(0.04, 0.004, 0, true), 2.56, 1)).capacity())
                .isPositive();
        assertThat(refusal(PipeJudge.judge(pipe(0.0600, 0.001, 0, true), 1, 1))).contains("not compact");
        assertThat(refusal(PipeJudge.judge(pipe(0.1000, 0.001, 0, true), 1, 1))).contains("buckles by itself");
    }

    private static Finding judge(PostType.Rating rating, PostType.Tube tube, double height, double load) {
        PostType type = new PostType("type", rating, Props.PLATE, Props.PLATE, tube);
        Post post = new Post("P", 0, height, Post.Stiffness.exactly(Plans.RIGID), 0, 0, type, new Post.NoPad());
        return PostJudge.judge(post, load, 0, 0, 1).finding();
    }

    /** At 2.5 m the table gives 20 kN and the first tube 23.1 kN; the last tube, 40 mm, gives less. */
    @Test
    void theLowerOfTableAndTubeRules() {
        Pipe strong = pipe(0.0603, 0.004, 0.025, false);
        Pipe weak = pipe(0.04, 0.004, 0.025, false);

        assertThat(judged(judge(TABLE, strong, 2.5, 10_000)).capacity()).isEqualTo(20_000);
        assertThat(judged(judge(TABLE, weak, 2.5, 10_000)).capacity()).isLessThan(10_000);
        assertThat(refusal(judge(TABLE, strong, 3.1, 10))).contains("last row");
    }

    @Test
    void aTubeAloneIsEnoughOnlyWhenPlain() {
        PostType.Rating none = new PostType.NotRated();

        assertThat(judged(judge(none, pipe(0.0603, 0.004, 0.025, true), 2.5, 10_000))
                        .capacity())
                .isCloseTo(23121.5588, within(0.001));
        assertThat(reason(judge(none, pipe(0.0603, 0.004, 0.025, false), 2.5, 10_000)))
                .contains("screw, joint and pin");
        assertThat(judged(judge(none, pipe(0.0603, 0.004, 0.025, false), 2.5, 30_000))
                        .capacity())
                .isLessThan(30_000);
        assertThat(reason(judge(none, new PostType.NoTube(), 2.5, 1))).contains("no rating");
    }

    @Test
    void theRuleNamesWhatWasRead() {
        PostType both = new PostType("type", TABLE, Props.PLATE, Props.PLATE, pipe(0.06, 0.004, 0, false));
        PostType tube =
                new PostType("type", new PostType.NotRated(), Props.PLATE, Props.PLATE, pipe(0.06, 0.004, 0, true));

        assertThat(rule(both)).startsWith("AISC 360-16").endsWith("lower than by rating table");
        assertThat(rule(tube)).startsWith("AISC 360-16");
    }

    private static String rule(PostType type) {
        return PostJudge.judge(Props.post(type, new Post.NoPad(), Post.Ends.UNDECLARED), 1, 0, 0, 1)
                .rule()
                .text();
    }

    /** Said to be plain, and yet of two tubes with neither pin nor screw described, or of timber of which too little is said. */
    @Test
    void aPlainTubeThatIsAlsoOfAnotherMakeIsNotEnough() {
        Telescope.Part outer = new Telescope.Part(new RoundTube(0.0603, 0.004), 235e6);
        Telescope.Part inner = new Telescope.Part(new RoundTube(0.0483, 0.0032), 235e6);
        PostType.Shaft open =
                new Telescope(outer, inner, 1.5, 0.3, 0.025, new Telescope.NoPin(), new Telescope.UnstatedScrew());
        Member stick = new Member(
                "4x4", new RectangularSection(0.09, 0.09), 1, Plans.HEM_FIR_2, true, Member.Moisture.UNSTATED, 0);
        PostType.Shaft timber = new TimberPost(stick, 0, false, new TimberPost.Unjoined());

        assertThat(reason(plainAnd(open, 10_000))).contains("is also described otherwise");
        assertThat(reason(plainAnd(timber, 10_000))).contains("is also described otherwise");
        assertThat(judged(plainAnd(open, 30_000)).capacity()).isCloseTo(23121.5588, within(0.001));
    }

    private static Finding plainAnd(PostType.Shaft shaft, double load) {
        PostType type = new PostType(
                "type",
                new PostType.NotRated(),
                Props.PLATE,
                Props.PLATE,
                pipe(0.0603, 0.004, 0.025, true),
                new PostType.NoClass(),
                shaft);
        Post post = new Post("P", 0, 2.5, Post.Stiffness.exactly(Plans.RIGID), 0, 0, type, new Post.NoPad());
        return PostJudge.judge(post, load, 0, 0, 1).finding();
    }
}
