package dev.underprop.engine.pad;

import static dev.underprop.engine.pad.Under.judged;
import static dev.underprop.engine.pad.Under.pad;
import static dev.underprop.engine.pad.Under.ratio;
import static dev.underprop.engine.pad.Under.reason;
import static dev.underprop.engine.pad.Under.refusal;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.soil.BearingMethod;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ground of known strength under a pad of 0.6 m by 0.4 m, founded 0.5 m deep, factor of safety 3. */
class GroundStrengthTest {

    private static final Pad PAD = pad(Pad.Kind.CONCRETE, new Pad.Unmade(), Under.NO_WEIGHT, new Pad.Within(0));
    private static final double UNSTATED = Double.NaN;

    private static Ground.Strength ground(Ground.Shear shear, double water, double depth, Ground.Condition condition) {
        return new Ground.Strength(
                BearingMethod.VESIC,
                shear,
                new Ground.Weight(18_000, 20_000, water),
                new Ground.Founding(depth, false),
                3,
                "report",
                condition,
                new Ground.NoSubgrade());
    }

    private static Ground.Strength ground(Ground.Shear shear, double water) {
        return ground(shear, water, 0.5, Ground.Condition.UNDISTURBED);
    }

    /** Sand of 30 degrees, dry, pads founded so deep in it (m). */
    static Ground sand(double depth) {
        return ground(sand(), 99, depth, Ground.Condition.UNDISTURBED);
    }

    private static Finding judge(Ground ground, double pressure) {
        return judge(ground, pressure, 0);
    }

    private static Finding judge(Ground ground, double pressure, double tilt) {
        return GroundPressure.judge(ground, Tread.whole(PAD, pressure, tilt), "q", Working.OFF);
    }

    private static Ground by(BearingMethod method, Ground.Shear shear) {
        return new Ground.Strength(
                method,
                shear,
                new Ground.Weight(18_000, 20_000, 99),
                new Ground.Founding(0.5, false),
                3,
                "report",
                Ground.Condition.UNDISTURBED,
                new Ground.NoSubgrade());
    }

    private static Ground.Shear sand() {
        return new Ground.Drained(0, StrictMath.toRadians(30));
    }

    /** (5.1416 x 50 x 1.1333 + 18 x 0.5) / 3 = 100.119 kPa. */
    @Test
    void clay() {
        Ground clay = ground(new Ground.Undrained(50_000), UNSTATED);

        assertThat(judged(judge(clay, 1)).capacity() / 1000).isCloseTo(100.119, within(0.001));
        assertThat(ratio(judge(clay, 100_000))).isLessThan(1);
        assertThat(ratio(judge(clay, 100_200))).isGreaterThan(1);
    }

    /**
     * Nq 18.4011, N gamma 22.4025, sq 1.3849, sgamma 0.73333: (9 x 18.4011 x 1.3849 + 0.5 x 18 x 0.4 x 22.4025 x 0.73333)/3 =
     * 96.16 kPa; with water at the surface q 5.095 and gamma 10.19: 54.44 kPa.
     */
    @Test
    void sandWithAndWithoutWater() {
        assertThat(judged(judge(ground(sand(), 0.9), 1)).capacity() / 1000).isCloseTo(96.16, within(0.02));
        assertThat(judged(judge(ground(sand(), 0), 1)).capacity() / 1000).isCloseTo(54.44, within(0.02));
    }

    @Test
    void halfOfTheLeastReadingOfAPenetrometer() {
        Ground probed = ground(new Ground.Penetrometer(List.of(110_000.0, 100_000.0)), UNSTATED);

        assertThat(judged(judge(probed, 1)).capacity() / 1000).isCloseTo(100.119, within(0.001));
    }

    /** 500 psf are 23.94 kPa. */
    @Test
    void readingsThatScatterOrStandAloneSayNothing() {
        assertThat(judged(judge(ground(new Ground.Penetrometer(List.of(100_000.0, 123_900.0)), UNSTATED), 1))
                        .capacity())
                .isPositive();
        assertThat(reason(judge(ground(new Ground.Penetrometer(List.of(100_000.0, 124_000.0)), UNSTATED), 1)))
                .contains("repeat them");
        assertThat(reason(judge(ground(new Ground.Penetrometer(List.of(100_000.0)), UNSTATED), 1)))
                .contains("at least two");
    }

    @Test
    void whatIsNotStatedLeavesItOpen() {
        assertThat(reason(judge(ground(sand(), UNSTATED), 1))).contains("(declare: waterDepth)");
        assertThat(reason(judge(ground(sand(), 1, UNSTATED, Ground.Condition.UNDISTURBED), 1)))
                .contains("(declare: foundingDepth)");
        assertThat(reason(judge(ground(sand(), 1, 0.5, Ground.Condition.FILL), 1)))
                .contains("fill");
        assertThat(reason(judge(
                        new Ground.Strength(
                                BearingMethod.VESIC,
                                sand(),
                                new Ground.Weight(18_000, UNSTATED, 1),
                                new Ground.Founding(0.5, false),
                                3,
                                "report",
                                Ground.Condition.UNDISTURBED,
                                new Ground.NoSubgrade()),
                        1)))
                .contains("(declare: saturatedUnitWeight)");
    }

    @Test
    void peatBearsNothing() {
        assertThat(refusal(judge(ground(sand(), 1, 0.5, Ground.Condition.ORGANIC), 1)))
                .contains("organic ground and peat carry no pad");
    }

    /** 200 kPa on 0.24 m2 spread 1 m down to 1.6 m by 1.4 m: 21.43 kPa. */
    @Test
    void aWeakerLayerBelow() {
        Ground top = new Ground.Given(200_000, "report", Ground.Condition.UNDISTURBED);

        assertThat(ratio(judge(new Ground.Layered(top, 1, 30_000, "report"), 200_000)))
                .isEqualTo(1);
        assertThat(ratio(judge(new Ground.Layered(top, 1, 20_000, "report"), 200_000)))
                .isCloseTo(21.42857 / 20, within(1e-5));
        assertThat(refusal(judge(
                        new Ground.Layered(
                                new Ground.Given(200_000, "report", Ground.Condition.ORGANIC), 1, 20_000, "report"),
                        1)))
                .contains("peat");
    }

    private static PadOverlap.Placed placed(double x, Post.Footing pad) {
        return new PadOverlap.Placed(Under.post(x, new Post.NoType(), pad), 0, 20_000);
    }

    /**
     * Two pads of 0.6 m by 0.4 m side by side 1.5 m apart, 20 kN on each, spread to 1.6 m by 1.4 m at a depth of 1 m: 8.9286 kPa
     * each, 17.857 together. At 0.8 m each presses alone, with 20/(1.4 x 1.2) = 11.905 kPa.
     */
    @Test
    void twoPadsOnOneWeakerLayer() {
        Ground top = new Ground.Given(200_000, "report", Ground.Condition.UNDISTURBED);
        PadOverlap.Placed here = placed(0, PAD);
        List<PadOverlap.Placed> beside = List.of(placed(1.5, PAD));

        assertThat(judged(PadOverlap.judge(here, beside, new Ground.Layered(top, 1, 17_000, "report")))
                        .demand())
                .isCloseTo(17_857.1, within(0.1));
        assertThat(ratio(PadOverlap.judge(here, beside, new Ground.Layered(top, 1, 17_000, "report"))))
                .isGreaterThan(1);
        assertThat(judged(PadOverlap.judge(here, beside, new Ground.Layered(top, 0.8, 17_000, "report")))
                        .demand())
                .isCloseTo(11_904.8, within(0.1));
        assertThat(((CheckResult.Condition) PadOverlap.judge(here, beside, top)).met())
                .isTrue();
    }

    @Test
    void aNeighbourWithoutAPadLeavesOverlapOpen() {
        Ground top = new Ground.Given(200_000, "report", Ground.Condition.UNDISTURBED);
        Post bare = new Post("Q", 9, 2, new Post.NoStiffness(), 0, 0, new Post.NoType(), new Post.NoPad());
        List<PadOverlap.Placed> others = List.of(new PadOverlap.Placed(bare, 0, 1));

        assertThat(reason(PadOverlap.judge(placed(0, PAD), others, top))).contains("under post Q");
        assertThat(((CheckResult.Condition)
                                PadOverlap.judge(placed(0, PAD), List.of(others.get(0), placed(0.5, PAD)), top))
                        .met())
                .isFalse();
    }

    /**
     * By Vesic, m = (2 + 2/3)/(1 + 2/3) = 1.6. At 2.5 percent iq = 0.975^1.6 = 0.96030 and igamma = 0.975^2.6 = 0.93629:
     * (229.36 x 0.96030 + 59.14 x 0.93629)/3 = 91.88 kPa. At 10 degrees iq = 0.73318, igamma = 0.60390: 67.96 kPa, of 96.16.
     */
    @Test
    void aPostThatPushesSidewaysHasLess() {
        assertThat(judged(judge(ground(sand(), 0.9), 1, 0.025)).capacity() / 1000)
                .isCloseTo(91.88, within(0.02));
        assertThat(judged(judge(ground(sand(), 0.9), 1, StrictMath.tan(Math.PI / 18)))
                                .capacity()
                        / 1000)
                .isCloseTo(67.96, within(0.02));
    }

    @Test
    void terzaghiIsForUprightLoadsAlone() {
        for (BearingMethod method : BearingMethod.values()) {
            Finding finding = judge(by(method, sand()), 1, 0.025);
            assertThat(finding instanceof CheckResult.Judged).isEqualTo(method.inclines());
        }
        assertThat(reason(judge(by(BearingMethod.TERZAGHI, sand()), 1, 0.025))).contains("upright loads");
    }

    /** 5 degrees: tan(3.3333°)/1.5 = 0.03883. Clay of 10 kPa under 100 kPa: 0.1/1.5 = 0.06667. */
    @Test
    void aPadThatMaySlideIsRefused() {
        Ground slippery = by(BearingMethod.EN_1997, new Ground.Drained(0, StrictMath.toRadians(5)));
        Ground soft = by(BearingMethod.HANSEN, new Ground.Undrained(10_000));

        assertThat(judged(judge(slippery, 1_000, 0.0388)).capacity()).isPositive();
        assertThat(refusal(judge(slippery, 1_000, 0.0389))).contains("slide");
        assertThat(judged(judge(soft, 100_000, 0.0666)).capacity()).isPositive();
        assertThat(refusal(judge(soft, 100_000, 0.0667))).contains("slide");
    }

    @Test
    void aGivenPressureIsForLoadsThatAreAllButUpright() {
        Ground given = new Ground.Given(200_000, "report", Ground.Condition.UNDISTURBED);

        assertThat(ratio(judge(given, 100_000, 0.1))).isEqualTo(0.5);
        assertThat(reason(judge(given, 100_000, 0.101))).contains("(declare: plumb");
    }

    @Test
    void aGivenPressureOnGroundOfUnknownConditionIsNotChecked() {
        Ground given = new Ground.Given(200_000, "report", Ground.Condition.UNKNOWN);

        assertThat(reason(judge(given, 1))).contains("(declare: condition)");
        assertThat(reason(judge(ground(sand(), 1, 0.5, Ground.Condition.UNKNOWN), 1)))
                .contains("(declare: condition)");
    }

    /** Sides 0.5 x 50 kPa x 2 m x 0.2 m / 0.24 m2 = 41.67 kPa, a third of it on top of 30 kPa: 43.89 kPa. */
    @Test
    void clayThatIsPunchedThrough() {
        Ground.Layered crust =
                new Ground.Layered(ground(new Ground.Undrained(50_000), UNSTATED), 0.2, 30_000, "report");

        assertThat(ratio(judge(crust, 40_000))).isCloseTo(40 / 43.8889, within(1e-4));
    }

    /** A rigid square of 1 m on E = 10 MPa, nu 0.3: G B/(2 (1 - nu)) x 4.7 = 3.8462 x 0.5/0.7 x 4.7 = 12.912 MN/m. */
    @Test
    void elasticGroundGivesByTheSizeOfThePad() {
        Ground ground = new Ground.Given(
                100_000, "report", Ground.Condition.UNDISTURBED, new Ground.Elastic(10e6, 20e6, 0.3, "report"));
        Pad square = new Pad("square", Pad.Kind.CONCRETE, 1, 1, 0.3, Under.HEAVY);
        Spring spring = GroundStiffness.of(ground, square);

        assertThat(spring.soft()).isCloseTo(12.912e6, within(1e3));
        assertThat(spring.stiff()).isCloseTo(2 * 12.912e6, within(2e3));
        assertThat(GroundStiffness.known(ground)).isTrue();
    }
}
