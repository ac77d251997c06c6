package dev.underprop.engine.pad;

import static dev.underprop.engine.pad.Under.judged;
import static dev.underprop.engine.pad.Under.ratio;
import static dev.underprop.engine.pad.Under.reason;
import static dev.underprop.engine.pad.Under.refusal;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Citation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Mats of 2x10 laid flat under a base plate of 0.2 m square; width 0.23495 m, S 56.8426 cm³, area 89.516 cm². */
class MatPadTest {

    private static final double PSI = 4.4482216152605 / (0.0254 * 0.0254);
    private static final double WIDTH = 9.25 * 0.0254;
    private static final double THICK = 1.5 * 0.0254;

    /** Fb 850 psi x CF 1.1 x CD 0.9; CM is 1 up to 1150 psi. */
    private static final double BENDING = 841.5 * PSI;

    private static Member timber(RectangularSection ply, WoodGrade.Sizes sizes, Member.Treated treated) {
        WoodGrade grade = new WoodGrade(
                "Hem-Fir",
                "No.2",
                850 * PSI,
                525 * PSI,
                150 * PSI,
                405 * PSI,
                1300 * PSI,
                1.3e6 * PSI,
                0.47e6 * PSI,
                0.43,
                sizes,
                Citation.read("NDS Supplement", "2018", "Table 4A"));
        Member.Details details = new Member.Details(new Member.Stamped(), new Member.Whole(), treated);
        return new Member("2x10", ply, 1, grade, true, Member.Moisture.DRY, 0, details);
    }

    private static Member board(Member.Treated treated) {
        return timber(new RectangularSection(THICK, WIDTH), WoodGrade.Sizes.WESTERN_DIMENSION, treated);
    }

    private static Post post(double along, double across, double thickness, Pad.Mat mat, double centring) {
        Pad pad = new Pad(
                "mat", Pad.Kind.TIMBER, along, across, thickness, new Pad.Unknown(), mat, new Pad.Within(centring));
        PostType.Plate base = new PostType.Plate(0.2, 0.2);
        return Under.post(0, new PostType("type", new PostType.NotRated(), base, base), pad);
    }

    private static Finding judge(Post post, double load) {
        return PadStrength.judge(post, Under.FIRM, Under.central(load, Double.NaN, 0), Under.ALONE, Working.OFF);
    }

    private static Pad.Mat mat(int sleepers, int bearers) {
        return new Pad.Mat(board(Member.Treated.UNTREATED), sleepers, bearers, true);
    }

    /** One board 0.6 m long stands out by 0.25 m beyond half of the plate: P/0.6 x 0.25²/2 over S. */
    @ParameterizedTest
    @CsvSource({"5000, 4.58137e6", "7000, 6.41392e6"})
    void oneSleeperBends(double load, double stress) {
        Finding finding = judge(post(0.6, WIDTH, THICK, mat(1, 0), 0), load);

        assertThat(judged(finding).demand()).isCloseTo(stress, within(50.0));
        assertThat(judged(finding).capacity()).isCloseTo(BENDING, within(1.0));
        assertThat(ratio(finding) <= 1).isEqualTo(load < 6000);
    }

    /** A short one stands out by 0.051 m: shear 1.5 x P/0.202 x 0.051 over its area rules, 0.94 against 0.39 in bending. */
    @Test
    void aStubIsSheared() {
        Finding finding = judge(post(0.202, WIDTH, THICK, mat(1, 0), 0), 20_000);

        assertThat(judged(finding).capacity()).isCloseTo(150 * 0.97 * 0.9 * PSI, within(1.0));
        assertThat(judged(finding).demand()).isCloseTo(1.5 * 20_000 / 0.202 * 0.051 / (WIDTH * THICK), within(1.0));
    }

    /** Three boards of 0.6 m under one of 0.70485 m: that one stands out by 0.302425 m and rules. */
    @Test
    void theBearerBendsAcross() {
        Finding along = judge(post(0.6, 3 * WIDTH, 2 * THICK, mat(3, 1), 0), 5000);
        Pad.Mat turned = new Pad.Mat(board(Member.Treated.UNTREATED), 3, 1, false);
        Finding across = judge(post(3 * WIDTH, 0.6, 2 * THICK, turned, 0), 5000);

        assertThat(judged(along).demand()).isCloseTo(5.70696e6, within(50.0));
        assertThat(judged(along).capacity()).isCloseTo(BENDING, within(1.0));
        assertThat(judged(across)).isEqualTo(judged(along));
    }

    /** Off by 0.01 m: 1 + 6 x 0.01 x root(1/0.6² + 1/0.70485²), and 0.312425 m stand out in place of 0.302425 m. */
    @Test
    void offTheMiddleItIsPressedHarder() {
        Finding finding = judge(post(0.6, 3 * WIDTH, 2 * THICK, mat(3, 1), 0.01), 5000);

        assertThat(judged(finding).demand()).isCloseTo(5.70696e6 * 1.131325 * 1.0672254, within(100.0));
        assertThat(refusal(PadStrength.judge(
                        post(0.6, 3 * WIDTH, 2 * THICK, mat(3, 1), 0.01),
                        Under.FIRM,
                        Under.central(5000, Double.NaN, 1),
                        Under.ALONE,
                        Working.OFF)))
                .contains("lifts");
    }

    /**
     * A plate of 0.2 m on a bearer of 0.23495 m may be 17 mm off its middle. On two boards, 0.4699 m, it leaves 135 mm beside it
     * already; one of 0.4 m leaves 35 mm, and 3 mm more than the thickness of 38.1 mm with 6 mm off the middle.
     */
    @Test
    void aPlateThatMayReachBesideItsTimbersIsNotChecked() {
        assertThat(ratio(judge(post(0.6, 3 * WIDTH, 2 * THICK, mat(3, 1), 0.0174), 1000)))
                .isLessThan(1);
        Post beyond = post(0.6, 3 * WIDTH, 2 * THICK, mat(3, 1), 0.0176);
        assertThat(reason(judge(beyond, 1000))).contains("beyond the timbers");
        assertThat(PadStrength.acrossGrain(beyond)).isNaN();

        Pad.Mat two = mat(2, 0);
        assertThat(ratio(judge(wide(two, 0.003), 1000))).isLessThan(1);
        assertThat(reason(judge(wide(two, 0.006), 1000))).contains("does not stand on all timbers");
    }

    private static Post wide(Pad.Mat two, double centring) {
        Pad pad = new Pad(
                "mat", Pad.Kind.TIMBER, 0.6, 2 * WIDTH, THICK, new Pad.Unknown(), two, new Pad.Within(centring));
        PostType.Plate base = new PostType.Plate(0.2, 0.4);
        return Under.post(0, new PostType("type", new PostType.NotRated(), base, base), pad);
    }

    @ParameterizedTest
    @EnumSource(
            value = Member.Treated.class,
            names = {"UNSTATED", "INCISING_UNSTATED", "FIRE_RETARDANT"})
    void unknownTreatmentIsNotChecked(Member.Treated treated) {
        Post post = post(0.6, WIDTH, THICK, new Pad.Mat(board(treated), 1, 0, true), 0);

        assertThat(reason(judge(post, 1000))).contains("treat");
        assertThat(PadStrength.acrossGrain(post)).isNaN();
    }

    @Test
    void aMatThatIsNotOfItsTimbersIsNotChecked() {
        assertThat(reason(judge(post(0.6, 0.26, THICK, mat(1, 0), 0), 1000))).contains("without gaps");
        assertThat(reason(judge(post(0.21, 3 * WIDTH, 2 * THICK, mat(3, 1), 0), 1000)))
                .contains("without gaps");
        assertThat(reason(judge(post(0.6, WIDTH, 0.05, mat(1, 0), 0), 1000))).contains("layers");
        assertThat(reason(judge(post(0.6, 3 * WIDTH, THICK, mat(3, 0), 0), 1000)))
                .contains("does not stand on all timbers");
        assertThat(reason(judge(post(0.6, 3 * WIDTH, 2 * THICK, mat(3, 2), 0), 1000)))
                .contains("does not stand on all timbers");
    }

    @Test
    void aStringerIsNotLaidFlat() {
        Member stringer = timber(
                new RectangularSection(5.5 * 0.0254, 9.5 * 0.0254),
                WoodGrade.Sizes.WESTERN_DIMENSION,
                Member.Treated.UNTREATED);

        assertThat(reason(judge(post(0.6, 9.5 * 0.0254, 5.5 * 0.0254, new Pad.Mat(stringer, 1, 0, true), 0), 1000)))
                .contains("stringers");
    }

    /** Wet: 405 psi x 0.67, over the whole plate of 0.2 m even where it is narrower than the board. */
    @Test
    void thePlateIsPressedAcrossTheGrain() {
        assertThat(PadStrength.acrossGrain(post(0.6, WIDTH, THICK, mat(1, 0), 0)))
                .isCloseTo(271.35 * PSI, within(1.0));
        assertThat(PadStrength.citation(post(0.6, WIDTH, THICK, mat(1, 0), 0)).document())
                .isEqualTo("NDS");
    }
}
