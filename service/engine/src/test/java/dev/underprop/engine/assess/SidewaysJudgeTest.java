package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Props.PLATE;
import static dev.underprop.engine.assess.Props.judged;
import static dev.underprop.engine.assess.Props.pad;
import static dev.underprop.engine.assess.Props.post;
import static dev.underprop.engine.assess.Props.reason;
import static dev.underprop.engine.assess.Props.refusal;
import static dev.underprop.engine.assess.Props.shore;
import static dev.underprop.engine.assess.Props.type;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.assess.SidewaysJudge.Demand;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A post of 20 kN at the most and 15 kN at the least. */
class SidewaysJudgeTest {

    private static final Shore BEAM = shore(0.1, Member.Moisture.DRY);
    private static final Post.End LOOSE = new Post.Unfastened();
    private static final Post.End STRONG = new Post.Fastened("bolts", 5000);

    private static Finding judge(Post.End head, Post.End foot, Pad.Kind kind, Demand demand) {
        return SidewaysJudge.judge(BEAM, post(type(PLATE, PLATE), pad(kind), new Post.Ends(head, foot)), demand);
    }

    private static Demand plumb(double least) {
        return new Demand(20_000, least, 0, 0.02);
    }

    /** 2.5 % of 20 kN is 500 N; a lean of 0.05 pushes 1000.83 N, and a share of 300 N comes on top. */
    @ParameterizedTest
    @CsvSource({"0.02, 0, 500", "0.05, 0, 1000.834", "0.05, 300, 1300.834", "0, 499, 500", "0, 501, 501"})
    void demand(double lean, double share, double expected) {
        assertThat(new Demand(20_000, 15_000, share, lean).force(Working.OFF)).isCloseTo(expected, within(0.001));
    }

    /** Head 0.2 x 15 kN / 1.5 = 2000 N; foot 0.1 x 15 kN / 1.5 = 1000 N on concrete, 2000 N on wood. */
    @ParameterizedTest
    @CsvSource({"CONCRETE, 1000", "SLAB, 1000", "STEEL, 1000", "TIMBER, 2000", "CRIB, 2000"})
    void frictionUnderTheLeastLoad(Pad.Kind kind, double capacity) {
        Finding finding = judge(LOOSE, LOOSE, kind, plumb(15_000));

        assertThat(judged(finding).demand()).isCloseTo(500, within(1e-9));
        assertThat(judged(finding).capacity()).isCloseTo(capacity, within(1e-9));
    }

    /** 6 kN at the least: 400 N at a foot on concrete. */
    @Test
    void aFootThatMaySlideFails() {
        Finding finding = judge(STRONG, LOOSE, Pad.Kind.CONCRETE, plumb(6_000));

        assertThat(judged(finding).capacity()).isCloseTo(400, within(1e-9));
        assertThat(judged(finding).demand()).isGreaterThan(judged(finding).capacity());
    }

    @Test
    void whereTheContactNearlyOpensFrictionIsRefused() {
        assertThat(refusal(judge(LOOSE, STRONG, Pad.Kind.CONCRETE, plumb(2_000))))
                .contains("fastens the head");
        assertThat(refusal(judge(STRONG, LOOSE, Pad.Kind.CONCRETE, plumb(0)))).contains("fastens the foot");
        assertThat(judge(LOOSE, STRONG, Pad.Kind.CONCRETE, plumb(2_001))).isInstanceOf(CheckResult.Judged.class);
        assertThat(judge(LOOSE, LOOSE, Pad.Kind.CONCRETE, new Demand(0, 0, 0, 0.02)))
                .isInstanceOf(CheckResult.Refused.class);
    }

    @Test
    void theWeakerFasteningCounts() {
        Finding holds = judge(STRONG, new Post.Fastened("anchors", 2000), Pad.Kind.CONCRETE, plumb(0));
        Finding fails = judge(new Post.Fastened("clip", 450), STRONG, Pad.Kind.CONCRETE, plumb(0));

        assertThat(judged(holds).capacity()).isEqualTo(2000);
        assertThat(judged(fails).capacity()).isEqualTo(450);
        assertThat(judged(fails).demand()).isCloseTo(500, within(1e-9));
    }

    @Test
    void whatIsNotDeclaredIsNotChecked() {
        Post.End silent = new Post.Undeclared();
        Post.End vague = new Post.Fastened("clip", Double.NaN);

        assertThat(reason(judge(silent, STRONG, Pad.Kind.CONCRETE, plumb(15_000))))
                .contains("head");
        assertThat(reason(judge(STRONG, silent, Pad.Kind.CONCRETE, plumb(15_000))))
                .contains("foot");
        assertThat(reason(judge(vague, STRONG, Pad.Kind.CONCRETE, plumb(15_000))))
                .contains("clip");
        assertThat(reason(judge(STRONG, vague, Pad.Kind.CONCRETE, plumb(15_000))))
                .contains("clip");
        assertThat(reason(judge(STRONG, STRONG, Pad.Kind.CONCRETE, new Demand(20_000, 0, Double.NaN, 0))))
                .contains("sideways loads");
        assertThat(reason(SidewaysJudge.judge(
                        BEAM, post(type(PLATE, PLATE), new Post.NoPad(), new Post.Ends(STRONG, LOOSE)), plumb(15_000))))
                .contains("no pad");
    }
}
