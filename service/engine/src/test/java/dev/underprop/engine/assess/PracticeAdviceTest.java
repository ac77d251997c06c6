package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.assess.Assessment.Advisory;
import dev.underprop.engine.plan.Circumstances;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Intake;
import dev.underprop.engine.plan.Intake.Question;
import dev.underprop.engine.plan.Intake.Reply;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Shore;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Good practice: each rule is told unless the plan tells that it is not due. */
class PracticeAdviceTest {

    private static final Member BEAM = Plans.twoByTen(3, 0);

    /** Posts under both end joists, on pads, with nothing answered. */
    private static final JobPlan SHORED = Plans.reference(new Fastening.Held(4000, "ties"), 5e7);

    private static final JobPlan WITHOUT_SHORES = Simple.floor(BEAM, 0.4, 3, 0.1, new Intensity(500, 1900, 0, 0));

    private static JobPlan answered(Question question, Reply reply, String note) {
        Circumstances before = SHORED.circumstances();
        Intake intake = new Intake(List.of(new Intake.Answer(question, reply, "", note)));
        return Plans.with(
                SHORED,
                new Circumstances(
                        before.floorRestraint(), before.lateral(), before.excavation(), intake, before.limits()));
    }

    /** The reference plan with its beam and posts moved along the joists' row (m). */
    private static JobPlan moved(double by) {
        Shore shore = SHORED.shores().get(0);
        Shore moved = new Shore(
                shore.name(),
                shore.y(),
                shore.beam(),
                shore.start(),
                shore.length(),
                shore.gaps(),
                shore.posts().stream()
                        .map(p -> Plans.post(p.name(), p.x() + by, 5e7))
                        .toList());
        return new JobPlan(SHORED.basis(), SHORED.floor(), List.of(moved), SHORED.ground(), SHORED.situations());
    }

    private static JobPlan withoutPads() {
        return Simple.beam(BEAM, 2, 0.1, 0.1, List.of(Simple.uniform(1000, 0)));
    }

    private static List<String> codes(JobPlan plan) {
        return PracticeAdvice.of(plan).stream().map(Advisory::code).toList();
    }

    private static void assertDue(Practice practice, JobPlan due, JobPlan not) {
        assertThat(codes(due)).contains(practice.code());
        assertThat(codes(not)).doesNotContain(practice.code());
    }

    @Test
    void eachIsDueInOnePlanAndNotInAnother() {
        assertDue(Practice.JACK_ALONE, SHORED, WITHOUT_SHORES);
        assertDue(Practice.PLUMB, SHORED, WITHOUT_SHORES);
        assertDue(Practice.CROWN_UP, SHORED, WITHOUT_SHORES);
        assertDue(Practice.LEVEL_BASE, SHORED, WITHOUT_SHORES);
        assertDue(Practice.TEMPORARY, SHORED, WITHOUT_SHORES);
        assertDue(Practice.TEMPORARY, SHORED, answered(Question.LONG_DURATION, Reply.NO, ""));
        assertDue(
                Practice.TEMPORARY,
                answered(Question.LONG_DURATION, Reply.YES, ""),
                answered(Question.LONG_DURATION, Reply.NO, ""));
        assertDue(Practice.SERVICES, SHORED, answered(Question.SERVICES, Reply.NO, ""));
        assertDue(
                Practice.SERVICES,
                answered(Question.SERVICES, Reply.UNKNOWN, ""),
                answered(Question.SERVICES, Reply.NO, ""));
        assertDue(Practice.PAD_CENTRE, SHORED, withoutPads());
        assertDue(Practice.END_POSTS, moved(0.1), SHORED);
        assertDue(Practice.END_POSTS, moved(-0.1), SHORED);
    }

    /** No plan can tell how old the house is, nor do without a permit. */
    @Test
    void thoseThatNoPlanCanTurnAwayAreInEvery() {
        for (JobPlan plan : List.of(SHORED, WITHOUT_SHORES, withoutPads())) {
            assertThat(codes(plan))
                    .contains(Practice.PERMIT_AND_ENGINEER.code(), Practice.LEAD.code(), Practice.ASBESTOS.code());
        }
    }

    /** The head plate is 7 in along the beam: a joist over its edge is still over the post. */
    @Test
    void anEndJoistOverTheHeadPlateIsOverThePost() {
        assertThat(codes(moved(3.4 * Plans.INCH))).doesNotContain(Practice.END_POSTS.code());
        assertThat(codes(moved(3.6 * Plans.INCH))).contains(Practice.END_POSTS.code());
        assertThat(PracticeAdvice.of(moved(3.6 * Plans.INCH)))
                .filteredOn(a -> a.code().equals(Practice.END_POSTS.code()))
                .extracting(Advisory::place)
                .containsExactly("A");
    }

    @Test
    void whatWasSeenOfServicesIsRepeatedOnce() {
        JobPlan gas = answered(Question.SERVICES, Reply.YES, "gas pipe along J3");

        assertThat(Assessor.assess(gas).advisories())
                .filteredOn(a -> a.message().contains("Pipes"))
                .singleElement()
                .matches(a -> a.code().equals("services") && a.message().endsWith("Noted: gas pipe along J3."));
    }

    @Test
    void theyStandInTheAnswer() {
        assertThat(Assessor.assess(SHORED).advisories()).containsAll(PracticeAdvice.of(SHORED));
    }

    @ParameterizedTest
    @EnumSource(Practice.class)
    void eachHasATextASourceAndACodeOfItsOwn(Practice practice) {
        Advisory advice = practice.advice();
        Set<String> codes = new HashSet<>();
        Arrays.stream(Practice.values()).forEach(p -> codes.add(p.code()));

        assertThat(advice.code()).matches("[a-z]+(-[a-z]+)*");
        assertThat(advice.message()).matches("[A-Z].{40,}\\.");
        assertThat(advice.source()).matches("common practice, no source|.*(CFR|IRC).*, from memory");
        assertThat(codes).hasSameSizeAs(Practice.values());
        assertThat(codes(moved(0.1))).contains(practice.code());
    }
}
