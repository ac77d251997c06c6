package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.PlanVerdict;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.standard.Basis;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plans that can be worked by hand, through the whole assessment. */
class WorkedPlansTest {

    private static final double SPAN = 2.4;
    private static final double LINE = 5000;
    private static final Member BEAM = Plans.twoByTen(3, 0);

    /** A beam of two equal spans on rigid posts; the middle one is lifted in the situation. */
    private static JobPlan twoSpans(double lift) {
        List<Post> posts = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            posts.add(Plans.post("P" + i, i * SPAN, Plans.RIGID));
        }
        Shore shore = new Shore("A", 1, BEAM, 0, 2 * SPAN, List.of(), posts);
        Situation situation = new Situation("lifted", List.of(), List.of(new Situation.PostLift(0, 1, lift)));
        return new JobPlan(
                Basis.US_ASD,
                new Floor(List.of(), List.of(), List.of(Simple.uniform(LINE, 0)), Floor.JoistWeight.INCLUDED_IN_DEAD),
                List.of(shore),
                new Ground.Unstated(),
                List.of(situation),
                Plans.EXACT);
    }

    private static double middlePost(double lift) {
        return Assessor.assess(twoSpans(lift))
                .situations()
                .get(0)
                .posts()
                .get(1)
                .greatest()
                .value();
    }

    /** Coefficient 10/8 of two equal spans; statics of structures, closed form. */
    @Test
    void theMiddlePostOfTwoSpansTakesTenEighths() {
        assertThat(middlePost(0)).isCloseTo(1.25 * LINE * SPAN, within(1e-6));
        double byHand =
                Assessor.assess(twoSpans(0)).situations().get(0).posts().get(1).byHand();
        assertThat(byHand).isCloseTo(LINE * SPAN, within(1e-6));
    }

    /** A support of two spans raised by d takes 48EId/(2L)³ more; closed form. */
    @Test
    void aLiftAddsLoadToItsPost() {
        double lift = 0.001;
        double added = 6 * TimberCapacity.rigidity(BEAM) * lift / (SPAN * SPAN * SPAN);

        assertThat(middlePost(lift)).isCloseTo(1.25 * LINE * SPAN + added, within(1e-6));
    }

    /** The wall's load beyond the shore tips joists that nothing holds down at the girder. */
    @Test
    void withTheSillOutALooseFloorTips() {
        Assessment assessment = Assessor.assess(Plans.reference(new Fastening.Loose(), Plans.RIGID));
        SituationResult out = assessment.situations().get(1);

        assertThat(assessment.verdict()).isEqualTo(PlanVerdict.UNSTABLE);
        assertThat(assessment.situations().get(0).stands()).isTrue();
        assertThat(out.verdict()).isEqualTo(PlanVerdict.UNSTABLE);
        String reason = ((SituationResult.Moves) out.stability()).reason();
        assertThat(reason).contains("J2 turns over A").contains("lifts off girder");
        assertThat(out.checks())
                .filteredOn(r -> r.id().built())
                .isNotEmpty()
                .allMatch(r -> r.verdict() == Verdict.NOT_CHECKED);
        assertThat(out.handChecks()).anyMatch(h -> h.place().equals("J2 on girder") && h.load() < 0);
    }

    /**
     * A joist on the shore and the girder alone is statically determinate: lever rule about the shore, for D + 0.75 L +
     * 0.75 S before the shore and 0.6 D behind it, without live load there. Inches and pounds; every joist draws from 2 ft.
     */
    @Test
    void tiedBeyondCapacityFailsWithTheLeverRulesUplift() {
        double wall = 2 * (310 + 0.75 * 180);
        double before = 2 * (12 + 0.75 * 40) * 42 / 12;
        double behind = 0.6 * 2 * 12 * (180 - 42) / 12;
        double uplift = (wall * (42 - 1.75) + before * (42 - 21) - behind * (180 - 42) / 2) / (174 - 42);
        double capacity = 100 * Plans.POUND;
        JobPlan plan = Plans.reference(new Fastening.Held(capacity, "ties"), Plans.RIGID);
        CheckResult result = Simple.check(plan, CheckId.BEARING_UPLIFT, "J3 on girder");
        CheckResult.Judged judged = (CheckResult.Judged) result.finding();

        assertThat(judged.demand() / Plans.POUND).isCloseTo(uplift, within(1e-6));
        assertThat(judged.capacity()).isEqualTo(capacity);
        assertThat(result.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(((CheckResult.InCase) result.where()).situation()).isEqualTo("sill out");
    }

    @Test
    void tiedWithinCapacityPasses() {
        JobPlan plan = Plans.reference(new Fastening.Held(300 * Plans.POUND, "ties"), Plans.RIGID);

        assertThat(Simple.check(plan, CheckId.BEARING_UPLIFT, "J3 on girder").verdict())
                .isEqualTo(Verdict.PASS);
    }
}
