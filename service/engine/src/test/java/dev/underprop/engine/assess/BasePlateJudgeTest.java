package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Props.PLATE;
import static dev.underprop.engine.assess.Props.judged;
import static dev.underprop.engine.assess.Props.pad;
import static dev.underprop.engine.assess.Props.post;
import static dev.underprop.engine.assess.Props.reason;
import static dev.underprop.engine.assess.Props.refusal;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.pad.BasePlateJudge;
import dev.underprop.engine.pad.BasePlateJudge.Material;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType.Plate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plate of 200 mm square on a pad of 500 mm by 400 mm by 250 mm. */
class BasePlateJudgeTest {

    private static Finding judge(Pad.Kind kind, double strength, double bearing, double load, double factored) {
        return BasePlateJudge.judge(
                post(PLATE, PLATE, pad(kind)), new Material(strength, bearing), load, factored, Working.OFF);
    }

    /** 0.60 x 0.85 x 20 MPa x 0.04 m² x 2 is 816 kN, whatever the load of the other combinations is. */
    @ParameterizedTest
    @CsvSource({"CONCRETE, 700000", "CONCRETE, 900000", "SLAB, 700000"})
    void concreteByTheFactoredLoad(Pad.Kind kind, double factored) {
        Finding finding = judge(kind, 20e6, Double.NaN, 1, factored);

        assertThat(judged(finding).demand()).isEqualTo(factored);
        assertThat(judged(finding).capacity()).isCloseTo(816_000, within(1e-6));
    }

    @Test
    void weakConcreteIsRefused() {
        assertThat(refusal(judge(Pad.Kind.CONCRETE, 15e6, Double.NaN, 1, 1000))).contains("2176 psi");
    }

    /** 40 kN and 120 kN on 0.04 m². */
    @ParameterizedTest
    @CsvSource({"TIMBER, 40000, 1e6", "TIMBER, 120000, 3e6", "CRIB, 40000, 1e6"})
    void timberByItsPressure(Pad.Kind kind, double load, double pressure) {
        Finding finding = judge(kind, Double.NaN, 2.8e6, load, Double.NaN);

        assertThat(judged(finding).demand()).isCloseTo(pressure, within(1e-6));
        assertThat(judged(finding).capacity()).isEqualTo(2.8e6);
    }

    @Test
    void whatIsNotKnownIsNotChecked() {
        assertThat(reason(judge(Pad.Kind.CONCRETE, Double.NaN, Double.NaN, 1, 1)))
                .contains("strength of the concrete");
        assertThat(reason(judge(Pad.Kind.CONCRETE, 20e6, Double.NaN, 1, Double.NaN)))
                .contains("strength combinations");
        assertThat(reason(judge(Pad.Kind.TIMBER, Double.NaN, Double.NaN, 1, 1))).contains("across the grain");
        assertThat(reason(judge(Pad.Kind.STEEL, 20e6, 1e6, 1, 1))).contains("steel pad");
        assertThat(reason(BasePlateJudge.judge(
                        post(PLATE, PLATE, new Post.NoPad()), Material.UNSTATED, 1, 1, Working.OFF)))
                .contains("no pad");
        assertThat(reason(BasePlateJudge.judge(
                        post(new Post.NoType(), pad(Pad.Kind.CONCRETE), Post.Ends.UNDECLARED),
                        Material.UNSTATED,
                        1,
                        1,
                        Working.OFF)))
                .contains("no post type");
    }

    @Test
    void aPlateBeyondItsPadIsNotJudged() {
        Post post = post(PLATE, new Plate(0.2, 0.45), pad(Pad.Kind.CONCRETE));

        assertThat(reason(BasePlateJudge.judge(post, new Material(20e6, Double.NaN), 1, 1, Working.OFF)))
                .contains("beyond its pad");
    }

    /** Half of 0.2 m and the centring, in 0.2 m of half a pad of 0.4 m. */
    @ParameterizedTest
    @CsvSource({"0.1, false", "0.102, true"})
    void aPlateOffTheMiddleMayReachBeyondItsPad(double centring, boolean beyond) {
        Pad pad = new Pad(
                "pad",
                Pad.Kind.CONCRETE,
                0.5,
                0.4,
                0.25,
                new Pad.Unknown(),
                new Pad.Cast(20e6),
                new Pad.Within(centring));
        Finding finding =
                BasePlateJudge.judge(post(PLATE, PLATE, pad), new Material(20e6, Double.NaN), 1, 1, Working.OFF);

        assertThat(finding instanceof CheckResult.NotChecked open
                        && open.reason().contains("beyond its pad"))
                .isEqualTo(beyond);
    }

    @Test
    void theRuleIsThatOfTheMaterial() {
        assertThat(BasePlateJudge.rule(post(PLATE, PLATE, pad(Pad.Kind.TIMBER))).document())
                .isEqualTo("NDS");
        assertThat(BasePlateJudge.rule(post(PLATE, PLATE, pad(Pad.Kind.SLAB))).document())
                .isEqualTo("ACI");
    }
}
