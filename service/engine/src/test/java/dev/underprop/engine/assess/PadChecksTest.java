package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.plan.Circumstances;
import dev.underprop.engine.plan.Excavation;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Intake;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Lateral;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Restraint;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pads in whole plans: a beam on two posts 2 m apart with 10 kN of dead load over each. */
class PadChecksTest {

    private static final Ground FIRM = new Ground.Given(
            100_000, "report", Ground.Condition.UNDISTURBED, new Ground.Modulus(10e6, 40e6, "plate test"));

    private static final Limits.FitUp EXACT = new Limits.FitUp(0, true);

    private static Circumstances circumstances(Excavation excavation, Limits.Settlement settlement) {
        return new Circumstances(
                Restraint.Sides.UNDECLARED,
                new Lateral.Unstated(),
                excavation,
                Intake.EMPTY,
                new Limits(EXACT, Limits.DEFAULT.transfer(), Limits.DEFAULT.plumb(), settlement));
    }

    private static CheckResult check(CheckId id, Pad.Centring centring, Limits.Settlement settlement) {
        Pad pad = new Pad(
                "pad", Pad.Kind.CONCRETE, 0.6, 1, 0.25, new Pad.Known(24_000, true), new Pad.Cast(20e6), centring);
        JobPlan plan = Simple.beam(
                Plans.twoByTen(3, 0),
                2,
                0.2,
                0.2,
                List.of(Simple.point(0, 10_000), Simple.point(2, 10_000)),
                pad,
                FIRM);
        return Simple.check(Plans.with(plan, circumstances(new Excavation.Unstated(), settlement)), id, "P1");
    }

    /**
     * 1.4 times 10 kN on 0.6 m², and 1.3678921 of it at the corner: 0.026186 of 0.25 m is the lean of 1.5 degrees, and 25 mm are
     * taken of a foot of which nothing is said. Beyond half of the plate of 0.2 m by 1 m stand out 0.25 m both ways: q 0.25²/2 over 0.1992²/6.
     */
    @Test
    void concreteIsJudgedByTheStrengthCombinations() {
        CheckResult result = check(CheckId.PAD_STRENGTH, new Pad.Within(0), new Limits.NoSettlement());

        assertThat(((CheckResult.Judged) result.finding()).demand()).isCloseTo(150_817, within(2.0));
        assertThat(result.verdict()).isEqualTo(Verdict.PASS);
        assertThat(((CheckResult.InCase) result.where()).combination()).isEqualTo("1.4 D");
    }

    /** (10 kN x (1 + 6 x 1.943651 x (0.025 m + 0.006546 m)) + 3600 N) / 0.6 m². */
    @Test
    void theCornerIsJudgedByTheAllowableStressCombinations() {
        CheckResult result = check(CheckId.PAD_ECCENTRICITY, new Pad.Within(0), new Limits.NoSettlement());

        assertThat(((CheckResult.Judged) result.finding()).demand())
                .isCloseTo((13_600 + 10_000 * 0.3678921) / 0.6, within(2.0));
    }

    /** The radius of relative stiffness is 1.0928 m, as worked out beside the slab's own rule: three of them are 3.278 m. */
    @ParameterizedTest
    @CsvSource({"2, NOT_CHECKED", "3.2, NOT_CHECKED", "3.3, PASS"})
    void postsOnASlabAreJudgedOnlyFarFromOneAnother(double apart, Verdict verdict) {
        Pad slab = new Pad(
                "slab",
                Pad.Kind.SLAB,
                0.6,
                1,
                0.25,
                new Pad.Known(24_000, true),
                new Pad.SlabPart(20e6, "two cores", Pad.Stands.INTERIOR));
        JobPlan plan = Simple.beam(
                Plans.twoByTen(3, 0),
                apart,
                0.2,
                0.2,
                List.of(Simple.point(0, 10_000), Simple.point(apart, 10_000)),
                slab,
                FIRM);

        assertThat(Simple.check(plan, CheckId.PAD_STRENGTH, "P1").verdict()).isEqualTo(verdict);
        assertThat(Simple.check(plan, CheckId.PAD_STRENGTH, "P2").verdict()).isEqualTo(verdict);
    }

    /**
     * 10 kN over 6 MN/m, and what the other pad 2 m away adds: 10 kN x 0.1587 x 0.9221 (0.15 x (3.1 x 1.6667^0.75 + 1.6)) over the
     * same, 0.2438 mm; the difference is less than that, and 8 mm are allowed for it.
     */
    @ParameterizedTest
    @CsvSource({"0.002, PASS", "0.0015, FAIL"})
    void thePadSettles(double limit, Verdict verdict) {
        CheckResult result = check(CheckId.PAD_SETTLEMENT, new Pad.Within(0), new Limits.Settles(limit, 0.004, "test"));

        assertThat(((CheckResult.Judged) result.finding()).demand()).isCloseTo(0.0016667 + 0.0002438, within(1e-6));
        assertThat(((CheckResult.Judged) result.finding()).capacity()).isEqualTo(limit);
        assertThat(result.verdict()).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"PAD_STRENGTH", "PAD_ECCENTRICITY", "PAD_SETTLEMENT"})
    void nothingIsTakenForGranted(CheckId id) {
        CheckResult result = check(id, new Pad.Anywhere(), new Limits.NoSettlement());

        assertThat(result.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(result.where()).isInstanceOf(CheckResult.NoCase.class);
    }

    private static List<CheckResult> excavation(Excavation excavation, int situation) {
        JobPlan plan = Plans.with(
                Plans.reference(new Fastening.Held(4000, "ties"), Plans.RIGID),
                circumstances(excavation, new Limits.NoSettlement()));
        return Assessor.assess(plan).situations().get(situation).checks().stream()
                .filter(r -> r.id() == CheckId.EXCAVATION)
                .toList();
    }

    @Test
    void cutsMustBeDeclaredWhereABearingGoes() {
        assertThat(excavation(new Excavation.Unstated(), 0)).isEmpty();
        assertThat(excavation(new Excavation.Unstated(), 1))
                .singleElement()
                .satisfies(r -> assertThat(r.verdict()).isEqualTo(Verdict.NOT_CHECKED));
        assertThat(excavation(new Excavation.None(), 1)).singleElement().satisfies(r -> {
            assertThat(r.verdict()).isEqualTo(Verdict.PASS);
            assertThat(r.place()).isEqualTo("plan");
        });
    }

    /**
     * The shore stands at 3 ft 6 in on pads of 20 in; the cut ends 0.8 m before the second pad and is 0.5 m deep. How far the other
     * posts may stand off the middle of their pads is not stated.
     */
    @Test
    void cutsAreJudgedInEverySituationPostByPost() {
        double end = 56 * Plans.INCH - 10 * Plans.INCH - 0.8;
        Excavation cuts =
                new Excavation.Cuts(List.of(new Excavation.Cut("pit", -Plans.ANY, end, -Plans.ANY, Plans.ANY, 0.5)));

        for (int situation : new int[] {0, 1}) {
            assertThat(excavation(cuts, situation).stream()
                            .map(r -> r.place() + " " + r.verdict())
                            .toList())
                    .isEqualTo(Stream.of("A1 FAIL", "A2 FAIL", "A3 NOT_CHECKED", "A4 NOT_CHECKED")
                            .toList());
        }
    }
}
