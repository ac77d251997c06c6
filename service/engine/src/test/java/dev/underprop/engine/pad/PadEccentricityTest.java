package dev.underprop.engine.pad;

import static dev.underprop.engine.pad.Under.judged;
import static dev.underprop.engine.pad.Under.pad;
import static dev.underprop.engine.pad.Under.post;
import static dev.underprop.engine.pad.Under.reason;
import static dev.underprop.engine.pad.Under.refusal;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A pad of 0.6 m by 0.4 m by 0.25 m that weighs 1440 N, on ground that is allowed 100 kPa; a lean of 0.04 adds 10 mm. */
class PadEccentricityTest {

    private static Finding judge(Pad.Weight weight, Pad.Centring centring, Ground ground, double load) {
        Pad pad = pad(Pad.Kind.CONCRETE, new Pad.Unmade(), weight, centring);
        return PadEccentricity.judge(post(pad), ground, Under.central(load, load, 0.04), Working.OFF);
    }

    /** 12 kN: (13.44 kN + 12 kN x 0.04 m x 6 x root(1/0.6² + 1/0.4²)) / 0.24 m². */
    @ParameterizedTest
    @CsvSource({"12000, 0.03, 92055.5", "16000, 0.03, 120740.7", "12000, 0, 65013.9", "0, 0.03, 6000"})
    void theWorstCornerCounts(double load, double centring, double pressure) {
        Finding finding = judge(Under.HEAVY, new Pad.Within(centring), Under.FIRM, load);

        assertThat(judged(finding).demand()).isCloseTo(pressure, within(1.0));
        assertThat(judged(finding).capacity()).isEqualTo(100_000);
    }

    /** A tube judged with its load 20 mm off stands for 20 mm of centring: with 10 mm of it, as with 30 mm and no tube. */
    @Test
    void theLoadStandsOffTheMiddleOfThePostToo() {
        Pad pad = pad(Pad.Kind.CONCRETE, new Pad.Unmade(), Under.HEAVY, new Pad.Within(0.01));
        Post post = post(0, Under.tube(0.02), pad);
        PadLoad load = PadLoad.on(post.type(), 12_000, 12_000, new Limits.Plumb(StrictMath.atan(0.04), true));

        assertThat(judged(PadEccentricity.judge(post, Under.FIRM, load, Working.OFF))
                        .demand())
                .isCloseTo(92055.5, within(1.0));
    }

    /** The kern ends where e x 3.0046 is a sixth, at 55.47 mm; 10 mm are lean. */
    @Test
    void outsideTheKernItIsRefused() {
        assertThat(judged(judge(Under.NO_WEIGHT, new Pad.Within(0.0454), Under.FIRM, 1000))
                        .demand())
                .isCloseTo(2 * 1000 / 0.24, within(10.0));
        assertThat(refusal(judge(Under.NO_WEIGHT, new Pad.Within(0.0456), Under.FIRM, 1000)))
                .contains("lifts");
        assertThat(refusal(judge(
                        Under.HEAVY,
                        new Pad.Within(0),
                        new Ground.Given(1e5, "report", Ground.Condition.ORGANIC),
                        1000)))
                .contains("peat");
    }

    @Test
    void whatIsNotKnownIsNotChecked() {
        assertThat(reason(judge(Under.HEAVY, new Pad.Anywhere(), Under.FIRM, 1000)))
                .contains("centring");
        assertThat(reason(judge(new Pad.Unknown(), new Pad.Within(0), Under.FIRM, 1000)))
                .contains("unit weight");
        assertThat(reason(judge(Under.HEAVY, new Pad.Within(0), new Ground.Unstated(), 1000)))
                .contains("ground");
        assertThat(reason(
                        PadEccentricity.judge(post(new Post.NoPad()), Under.FIRM, Under.central(1, 1, 0), Working.OFF)))
                .contains("no pad");
    }

    /** A load 20 mm off the foot of a post without a type stands for 20 mm of centring. */
    @Test
    void theRequestMaySayHowFarOffTheFootTheLoadActs() {
        Pad pad = pad(Pad.Kind.CONCRETE, new Pad.Unmade(), Under.HEAVY, new Pad.Within(0.01));
        Post post = post(0, new Post.NoType(), pad);
        PadLoad load = new PadLoad(12_000, 12_000, 0.04, new PadLoad.Foot(0.02, true));

        assertThat(judged(PadEccentricity.judge(post, Under.FIRM, load, Working.OFF))
                        .demand())
                .isCloseTo(92055.5, within(1.0));
    }

    /**
     * A mat of 0.3 m by 2.4 m on the surface of sand, 45 mm off its middle: the worst corner has 1.907 of the mean, but the 0.21 m
     * by 2.31 m that bear have 1.4842 of it, and bear 0.7 x (1 - 0.4 x 0.21/2.31)/(1 - 0.4 x 0.3/2.4) = 0.71005 of what the whole
     * does: 2.0903 times the ratio of a load in the middle, a tenth more than the corner.
     */
    @Test
    void onALongMatThePartThatBearsIsStricterThanTheCorner() {
        Pad mat = new Pad(
                "mat", Pad.Kind.TIMBER, 2.4, 0.3, 0.1, Under.NO_WEIGHT, new Pad.Unmade(), new Pad.Within(0.045));
        Ground sand = GroundStrengthTest.sand(0);
        PadLoad load = Under.central(10_000, 10_000, 0);
        double middle = Under.ratio(PadPressure.judge(post(mat), sand, load, Working.OFF));

        assertThat(Under.ratio(PadEccentricity.judge(post(mat), sand, load, Working.OFF)) / middle)
                .isCloseTo(2.0903, within(1e-3));
    }
}
