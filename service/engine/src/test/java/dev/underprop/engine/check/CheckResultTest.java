package dev.underprop.engine.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.standard.Citation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ratios, verdicts and their order. */
class CheckResultTest {

    private static final CheckResult PASSING = of(judged(1, 2));
    private static final CheckResult FAILING = of(judged(3, 2));
    private static final CheckResult UNCHECKED = of(new CheckResult.NotChecked("missing"));
    private static final CheckResult NOTHING = of(new CheckResult.NotApplicable("nothing there"));
    private static final CheckResult REFUSED = of(new CheckResult.Refused(Measure.STRESS, 1, "too slender"));

    private static Finding judged(double demand, double capacity) {
        return new CheckResult.Judged(Measure.FORCE, demand, capacity);
    }

    private static CheckResult of(Finding finding) {
        return new CheckResult(
                CheckId.POST_RATING, "A1", finding, new CheckResult.NoCase(), Citation.read("test", "", "test"));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 5, 0, PASS",
        "5, 5, 1, PASS",
        "5.0000001, 5, 1.00000002, FAIL",
        "1, 0, Infinity, FAIL",
        "0, 0, NaN, NOT_CHECKED",
        "Infinity, 5, Infinity, FAIL",
        "Infinity, Infinity, NaN, NOT_CHECKED"
    })
    void demandOverCapacity(double demand, double capacity, double ratio, Verdict verdict) {
        CheckResult result = of(judged(demand, capacity));

        assertThat(Double.compare(result.ratio(), ratio)).isZero();
        assertThat(result.verdict()).isEqualTo(verdict);
    }

    @Test
    void demandAndCapacityAreNumbersAndNotNegative() {
        assertThatIllegalArgumentException().isThrownBy(() -> judged(-1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> judged(1, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> judged(Double.NaN, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> judged(1, Double.NaN));
    }

    @Test
    void otherFindings() {
        assertThat(REFUSED.ratio()).isInfinite();
        assertThat(REFUSED.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(UNCHECKED.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(UNCHECKED.ratio()).isNaN();
        assertThat(NOTHING.verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
        assertThat(of(new CheckResult.Condition(true, Measure.FORCE, 1, "holds"))
                        .verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(of(new CheckResult.Condition(false, Measure.FORCE, 0, "does not"))
                        .verdict())
                .isEqualTo(Verdict.FAIL);
    }

    /** What fails is never outdone by what was not checked, nor that by what passed. */
    @Test
    void failingIsWorstThenNotChecked() {
        List<CheckResult> results = new ArrayList<>(List.of(REFUSED, UNCHECKED, PASSING, NOTHING, FAILING));
        results.sort(CheckResult.BEST_FIRST);

        assertThat(results.subList(2, 5)).containsExactly(UNCHECKED, FAILING, REFUSED);
        assertThat(results.subList(0, 2)).containsExactlyInAnyOrder(PASSING, NOTHING);
    }

    @Test
    void verdictOfAPlan() {
        assertThat(PlanVerdict.over(List.of(PASSING, NOTHING))).isEqualTo(PlanVerdict.ADEQUATE);
        assertThat(PlanVerdict.over(List.of(PASSING, UNCHECKED))).isEqualTo(PlanVerdict.INCOMPLETE);
        assertThat(PlanVerdict.over(List.of(UNCHECKED, FAILING, PASSING))).isEqualTo(PlanVerdict.INADEQUATE);
        assertThat(PlanVerdict.over(List.of(of(judged(0, 0))))).isEqualTo(PlanVerdict.INCOMPLETE);
    }

    @Test
    void theWorseOfTwoVerdicts() {
        List<PlanVerdict> order =
                List.of(PlanVerdict.ADEQUATE, PlanVerdict.INCOMPLETE, PlanVerdict.INADEQUATE, PlanVerdict.UNSTABLE);
        for (PlanVerdict one : order) {
            for (PlanVerdict other : order) {
                assertThat(one.worse(other)).isEqualTo(Collections.max(List.of(one, other)));
            }
        }
        assertThat(PlanVerdict.values()).containsExactlyElementsOf(order);
    }

    @Test
    void theWorseOfTwoChecks() {
        for (Verdict one : Verdict.values()) {
            for (Verdict other : Verdict.values()) {
                assertThat(one.worse(other)).isEqualTo(Collections.max(List.of(one, other)));
            }
        }
    }

    /** Every check says what it judges, is made in every situation or where a bearing goes, and can be made. */
    @Test
    void everyCheckIsDescribedAndBuilt() {
        assertThat(CheckId.values()).allMatch(CheckId::built);
        assertThat(List.of(CheckId.values()))
                .extracting(CheckId::title)
                .doesNotHaveDuplicates()
                .allMatch(t -> t.length() > 10);
        assertThat(CheckId.values())
                .filteredOn(check -> check.scope() == CheckId.Scope.BEARING_REMOVED)
                .containsExactly(CheckId.LATERAL_LOADS, CheckId.EXCAVATION);
        assertThat(CheckId.INTAKE.scope()).isEqualTo(CheckId.Scope.ALWAYS);
    }

    @Test
    void requiredChecksGrowWhenABearingGoes() {
        assertThat(CheckId.required(true)).containsExactly(CheckId.values());
        assertThat(CheckId.required(true)).containsAll(CheckId.required(false));
        assertThat(CheckId.required(false)).doesNotContain(CheckId.EXCAVATION, CheckId.LATERAL_LOADS);
        assertThat(List.of(CheckId.values())).extracting(CheckId::id).doesNotHaveDuplicates();
    }
}
