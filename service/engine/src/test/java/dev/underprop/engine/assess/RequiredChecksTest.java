package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.PlanVerdict;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No section left out of a plan shortens the list of checks or turns one into a pass. */
class RequiredChecksTest {

    private static final JobPlan TIED = Plans.reference(new Fastening.Held(4000, "ties"), 5e7);

    static Stream<JobPlan> plans() {
        return Stream.of(
                TIED,
                Plans.reference(new Fastening.Loose(), Plans.RIGID),
                Plans.reference(new Fastening.Undescribed("nails"), 1e7),
                Simple.beam(Plans.twoByTen(2, 50), 2, 0.1, 0.1, List.of()));
    }

    @ParameterizedTest
    @MethodSource("plans")
    void everyRequiredCheckStandsInEverySituation(JobPlan plan) {
        Assessment assessment = Assessor.assess(plan);
        for (int i = 0; i < plan.situations().size(); i++) {
            boolean removed = !plan.situations().get(i).removed().isEmpty();
            List<CheckResult> checks = assessment.situations().get(i).checks();
            assertThat(ids(checks)).containsExactlyInAnyOrderElementsOf(CheckId.required(removed));
            assertThat(checks).filteredOn(r -> !r.id().built()).allMatch(r -> r.verdict() == Verdict.NOT_CHECKED);
        }
        assertThat(assessment.verdict()).isNotEqualTo(PlanVerdict.ADEQUATE);
        assertThat(assessment.verdict())
                .isEqualTo(assessment.situations().stream()
                        .map(SituationResult::verdict)
                        .max(PlanVerdict::compareTo)
                        .orElseThrow());
    }

    private static Set<CheckId> ids(List<CheckResult> checks) {
        return checks.stream().map(CheckResult::id).collect(Collectors.toCollection(TreeSet::new));
    }

    static Stream<JobPlan> leftOut() {
        return Stream.of(
                withPosts(p -> new Post(
                        p.name(), p.x(), p.height(), p.stiffness(), p.gap(), p.lift(), p.type(), new Post.NoPad())),
                withPosts(p -> new Post(
                        p.name(), p.x(), p.height(), p.stiffness(), p.gap(), p.lift(), new Post.NoType(), p.footing())),
                new JobPlan(TIED.basis(), TIED.floor(), TIED.shores(), new Ground.Unstated(), TIED.situations()));
    }

    private static JobPlan withPosts(UnaryOperator<Post> change) {
        List<Shore> shores = TIED.shores().stream()
                .map(s -> new Shore(
                        s.name(),
                        s.y(),
                        s.beam(),
                        s.start(),
                        s.length(),
                        s.gaps(),
                        s.posts().stream().map(change).toList()))
                .toList();
        return new JobPlan(TIED.basis(), TIED.floor(), shores, TIED.ground(), TIED.situations());
    }

    @ParameterizedTest
    @MethodSource("leftOut")
    void leavingOutNeverMakesAPass(JobPlan poorer) {
        List<CheckResult> before = Assessor.assess(TIED).checks();
        List<CheckResult> after = Assessor.assess(poorer).checks();
        int lost = 0;
        assertThat(after).hasSameSizeAs(before);
        for (int i = 0; i < before.size(); i++) {
            assertThat(after.get(i).place()).isEqualTo(before.get(i).place());
            if (!after.get(i).finding().equals(before.get(i).finding())) {
                assertThat(after.get(i).verdict()).isEqualTo(Verdict.NOT_CHECKED);
                lost++;
            }
        }
        assertThat(lost).isGreaterThanOrEqualTo(4);
        assertThat(Assessor.assess(poorer).verdict()).isNotEqualTo(PlanVerdict.ADEQUATE);
    }
}
