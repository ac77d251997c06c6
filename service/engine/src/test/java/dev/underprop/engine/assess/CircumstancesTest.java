package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.plan.Circumstances;
import dev.underprop.engine.plan.Excavation;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Intake;
import dev.underprop.engine.plan.Intake.Question;
import dev.underprop.engine.plan.Intake.Reply;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Lateral;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Restraint;
import dev.underprop.engine.plan.Shore;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sideways hold, given sideways loads and the questions asked on site. */
class CircumstancesTest {

    private static final JobPlan PLAIN = Plans.reference(new Fastening.Held(500 * Plans.POUND, "ties"), 5e7);

    private static JobPlan with(Restraint.Sides floor, Lateral lateral, Intake intake) {
        return Plans.with(PLAIN, new Circumstances(floor, lateral, new Excavation.Unstated(), intake, Limits.DEFAULT));
    }

    private static JobPlan with(Restraint.Sides floor, Lateral lateral) {
        return with(floor, lateral, Intake.EMPTY);
    }

    private static JobPlan answered(Question question, Reply reply, String load) {
        Intake intake = new Intake(List.of(new Intake.Answer(question, reply, load, "seen")));
        return with(Restraint.Sides.UNDECLARED, new Lateral.Unstated(), intake);
    }

    private static CheckResult check(JobPlan plan, CheckId id, String place) {
        return Simple.check(plan, id, place);
    }

    private static double posts(SituationResult situation) {
        return situation.posts().stream().mapToDouble(p -> p.greatest().value()).sum();
    }

    @Test
    void whatIsNotDeclaredIsNotChecked() {
        assertThat(check(PLAIN, CheckId.SIDEWAYS_RESTRAINT, "floor, along the shores")
                        .verdict())
                .isEqualTo(Verdict.NOT_CHECKED);
        assertThat(check(PLAIN, CheckId.SIDEWAYS_RESTRAINT, "heads of A, along the joists")
                        .verdict())
                .isEqualTo(Verdict.NOT_CHECKED);
        assertThat(check(PLAIN, CheckId.LATERAL_LOADS, "plan").verdict()).isEqualTo(Verdict.NOT_CHECKED);
    }

    /** The sum over all posts in one case is no more than the sum of each one's greatest, and not much less. */
    @Test
    void theNotionalForceIsAPartOfWhatThePostsCarryTogether() {
        SituationResult out = Assessor.assess(Plans.exact(PLAIN)).situations().get(1);
        SituationResult.Sideways heads = out.whatIf().sideways().get(0);

        assertThat(heads.place()).isEqualTo("heads of A");
        assertThat(heads.force()).isLessThanOrEqualTo(0.025 * posts(out)).isGreaterThan(0.025 * 0.8 * posts(out));
        assertThat(heads.notional()).isEqualTo(heads.force());
    }

    /** 0.6 of wind or 0.7 of earthquake, whichever is more, on top of the notional force; never both. */
    @Test
    void givenForcesActOnTheFloor() {
        Lateral given = new Lateral.Given(
                "the engineer",
                List.of(
                        new Lateral.Force("w", Lateral.Origin.WIND, 1000, 4000),
                        new Lateral.Force("e", Lateral.Origin.SEISMIC, 2000, 100)));
        List<SituationResult.Sideways> forces = Assessor.assess(with(Restraint.Sides.UNDECLARED, given))
                .situations()
                .get(1)
                .whatIf()
                .sideways();
        SituationResult.Sideways along = forces.get(2);
        SituationResult.Sideways across = forces.get(3);

        assertThat(along.place()).isEqualTo("floor");
        assertThat(along.force() - along.notional()).isCloseTo(0.7 * 2000, within(1e-9));
        assertThat(across.force() - across.notional()).isCloseTo(0.6 * 4000, within(1e-9));
        assertThat(check(with(Restraint.Sides.UNDECLARED, given), CheckId.LATERAL_LOADS, "plan")
                        .verdict())
                .isEqualTo(Verdict.NOT_APPLICABLE);
    }

    @Test
    void aFreeStandingFloorFailsAndACapacityIsCompared() {
        Restraint.Sides sides = new Restraint.Sides(new Restraint.Free(), new Restraint.Held("end wall", 100));
        JobPlan plan = with(sides, new Lateral.None("the engineer"));

        assertThat(check(plan, CheckId.SIDEWAYS_RESTRAINT, "floor, along the shores")
                        .verdict())
                .isEqualTo(Verdict.FAIL);
        CheckResult across = check(plan, CheckId.SIDEWAYS_RESTRAINT, "floor, along the joists");
        assertThat(across.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(across.ratio()).isGreaterThan(1);
        Restraint.Sides held =
                new Restraint.Sides(new Restraint.Held("deck", Double.NaN), new Restraint.Held("end wall", 1e6));
        JobPlan better = with(held, new Lateral.None("the engineer"));
        assertThat(check(better, CheckId.SIDEWAYS_RESTRAINT, "floor, along the shores")
                        .verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(check(better, CheckId.SIDEWAYS_RESTRAINT, "floor, along the joists")
                        .verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(check(better, CheckId.LATERAL_LOADS, "plan").verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
    }

    /** A line of posts of which nothing holds the heads. */
    @Test
    void aFreeStandingShoreFails() {
        Shore shore = PLAIN.shores().get(0);
        Shore free = new Shore(
                shore.name(),
                shore.y(),
                shore.beam(),
                shore.start(),
                shore.length(),
                shore.gaps(),
                shore.posts(),
                new Shore.Bracing(
                        new Restraint.Sides(new Restraint.Free(), new Restraint.Held("joists", Double.NaN)),
                        new Restraint.Undeclared()));
        JobPlan plan = new JobPlan(
                PLAIN.basis(), PLAIN.floor(), List.of(free), PLAIN.ground(), PLAIN.situations(), PLAIN.circumstances());

        assertThat(check(plan, CheckId.SIDEWAYS_RESTRAINT, "heads of A, along the shores")
                        .verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(check(plan, CheckId.SIDEWAYS_RESTRAINT, "heads of A, along the joists")
                        .verdict())
                .isEqualTo(Verdict.PASS);
    }

    @Test
    void everyQuestionIsAskedByName() {
        for (Question question : Question.values()) {
            assertThat(check(PLAIN, CheckId.INTAKE, question.words()).verdict())
                    .as(question.words())
                    .isEqualTo(Verdict.NOT_CHECKED);
            assertThat(check(answered(question, Reply.NO, ""), CheckId.INTAKE, question.words())
                            .verdict())
                    .as(question.words())
                    .isEqualTo(Verdict.NOT_APPLICABLE);
        }
    }

    @Test
    void aYesAsksForWhatItMeans() {
        assertThat(check(answered(Question.CHIMNEY, Reply.YES, ""), CheckId.INTAKE, "chimney")
                        .verdict())
                .isEqualTo(Verdict.NOT_CHECKED);
        assertThat(check(answered(Question.CHIMNEY, Reply.YES, "wall"), CheckId.INTAKE, "chimney")
                        .verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(check(answered(Question.DECAY, Reply.YES, ""), CheckId.INTAKE, "decay or notches")
                        .verdict())
                .isEqualTo(Verdict.NOT_CHECKED);
        JobPlan veneer = answered(Question.BRICK_VENEER, Reply.YES, "");
        assertThat(check(veneer, CheckId.INTAKE, "brick veneer").verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
        assertThat(Assessor.assess(veneer).advisories())
                .anyMatch(a -> a.code().equals("intake") && a.message().contains("seen"));
    }
}
