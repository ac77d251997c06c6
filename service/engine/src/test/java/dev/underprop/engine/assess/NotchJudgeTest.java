package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.EndNotch;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Intake.Reply;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A 2x10 of Hem-Fir with Fv of 150 psi, times 0.9 of permanent load. */
class NotchJudgeTest {

    private static Joist joist(EndNotch notch) {
        return new Joist("J", 0, 0, 4, Plans.twoByTen(1, 0), notch);
    }

    private static Finding cut(double inches, double load) {
        return NotchJudge.judge(joist(new EndNotch.Cut(inches * Plans.INCH)), Reply.YES, load);
    }

    /** 2 in deep: 2/3 x 135 x 1.5 x 7.25 x (7.25/9.25)² = 601.3 lb. */
    @Test
    void whatIsLeftCarriesTheWholeReaction() {
        CheckResult.Judged judged = Props.judged(cut(2, 2500));

        assertThat(judged.demand()).isEqualTo(2500);
        assertThat(judged.capacity() / Plans.POUND).isCloseTo(601.2628, within(1e-3));
    }

    /** A quarter of 9.25 in is 2.3125 in. */
    @Test
    void deeperThanAQuarterIsRefused() {
        assertThat(cut(2.31, 1)).isInstanceOf(CheckResult.Judged.class);
        assertThat(Props.refusal(cut(2.32, 1))).contains("deeper than a quarter");
        assertThat(Props.refusal(cut(9.25, 1))).contains("as deep as the joist");
    }

    @Test
    void whatIsNotKnownIsNotChecked() {
        assertThat(Props.reason(NotchJudge.judge(joist(new EndNotch.Unstated()), Reply.UNKNOWN, 1)))
                .contains("not known");
        assertThat(Props.reason(NotchJudge.judge(joist(new EndNotch.Unstated()), Reply.YES, 1)))
                .contains("not known");
    }

    @Test
    void notNotchedIsSettledByTheIntakeOrByTheJoist() {
        assertThat(NotchJudge.judge(joist(new EndNotch.Unstated()), Reply.NO, 1))
                .isInstanceOf(CheckResult.NotApplicable.class);
        assertThat(cut(0, 1)).isInstanceOf(CheckResult.NotApplicable.class);
        assertThat(NotchJudge.judge(joist(new EndNotch.Cut(0.05)), Reply.NO, 1)).isInstanceOf(CheckResult.Judged.class);
    }

    @Test
    void aJoistThatRunsOnDoesNotEndThere() {
        assertThat(NotchJudge.endsOn(bearing(0), joist(new EndNotch.Unstated())))
                .isTrue();
        assertThat(NotchJudge.endsOn(bearing(0.05), joist(new EndNotch.Unstated())))
                .isTrue();
        assertThat(NotchJudge.endsOn(bearing(4), joist(new EndNotch.Unstated())))
                .isTrue();
        assertThat(NotchJudge.endsOn(bearing(0.06), joist(new EndNotch.Unstated())))
                .isFalse();
        assertThat(NotchJudge.endsOn(bearing(2), joist(new EndNotch.Unstated())))
                .isFalse();
    }

    private static Bearing bearing(double y) {
        return new Bearing("sill", y, 0.1, Plans.RIGID, -Plans.ANY, Plans.ANY, new Fastening.Loose(), List.of());
    }

    /** The middle joist of three brings 2 kN to each end; 2 in of notch leave 601.3 lb, 2.675 kN; 3 kN are too much. */
    @Test
    void inAPlanEveryEndIsJudged() {
        assertThat(check(2000).verdict()).isEqualTo(Verdict.PASS);
        assertThat(Props.judged(check(2000).finding()).demand()).isCloseTo(2000, within(1.0));
        assertThat(check(3000).verdict()).isEqualTo(Verdict.FAIL);
    }

    /** Joists 0.5 m apart over 4 m: a load (Pa) is as many newtons at each end. */
    private static CheckResult check(double load) {
        JobPlan bare = Simple.floor(Plans.twoByTen(1, 0), 0.5, 4, 0.1, new Intensity(load, 0, 0, 0));
        List<Joist> joists = bare.floor().joists().stream()
                .map(j ->
                        new Joist(j.name(), j.x(), j.start(), j.length(), j.member(), new EndNotch.Cut(2 * Plans.INCH)))
                .toList();
        Floor floor = new Floor(
                joists,
                bare.floor().bearings(),
                bare.floor().loads(),
                bare.floor().joistWeight());
        return Simple.check(Simple.plan(floor, List.of(), bare.ground()), CheckId.JOIST_NOTCH, "J2 on near");
    }

    private static List<Joist> notched(double inches) {
        return joists(new EndNotch.Cut(inches * Plans.INCH));
    }

    private static List<Joist> joists(EndNotch notch) {
        return List.of(0.0, 0.5, 1.0).stream()
                .map(x -> new Joist("J" + (int) (1 + 2 * x), x, 0, 4, Plans.twoByTen(1, 0), notch))
                .toList();
    }

    private static Floor resting(List<Bearing> bearings, double load) {
        Load area = new Load.Area("floor", new Intensity(load, 0, 0, 0), -Plans.ANY, Plans.ANY, -Plans.ANY, Plans.ANY);
        return new Floor(notched(2), bearings, List.of(area), Floor.JoistWeight.INCLUDED_IN_DEAD);
    }

    /** Bearings at 0.10, 2 and 3.90 m, the joist from 0 to 4 m: cut ends are judged at the outer two, not between. */
    @Test
    void aCutEndThatReachesPastItsBearingIsJudged() {
        List<Bearing> bearings = List.of(seat("near", 0.1), seat("middle", 2), seat("far", 3.9));
        JobPlan plan = Simple.plan(resting(bearings, 2000), List.of(), new Ground.Unstated());

        assertThat(notches(plan, "J2")).containsExactly("J2 on near", "J2 on far");
    }

    /** Of ends past their bearings nothing is said: that is asked, at both of them. */
    @Test
    void anEndPastItsBearingOfWhichNothingIsSaidIsNotChecked() {
        List<Bearing> bearings = List.of(seat("near", 0.1), seat("middle", 2), seat("far", 3.9));
        Load area = new Load.Area("floor", new Intensity(2000, 0, 0, 0), -Plans.ANY, Plans.ANY, -Plans.ANY, Plans.ANY);
        Floor loaded =
                new Floor(joists(new EndNotch.Unstated()), bearings, List.of(area), Floor.JoistWeight.INCLUDED_IN_DEAD);
        JobPlan plan = Simple.plan(loaded, List.of(), new Ground.Unstated());

        for (String place : List.of("J2 on near", "J2 on far")) {
            assertThat(Props.reason(
                            Simple.check(plan, CheckId.JOIST_NOTCH, place).finding()))
                    .contains("(declare: endNotch)");
        }
    }

    /** 1000 N/m over 4 m on bearings at 0 and 3.90 m: 4000 x 2 / 3.9 = 2051 N, and half as much again fails. */
    @Test
    void theWholeReactionOfThatBearingCounts() {
        List<Bearing> bearings = List.of(seat("near", 0), seat("far", 3.9));
        JobPlan passes = Simple.plan(resting(bearings, 2000), List.of(), new Ground.Unstated());
        JobPlan fails = Simple.plan(resting(bearings, 3000), List.of(), new Ground.Unstated());
        CheckResult far = Simple.check(passes, CheckId.JOIST_NOTCH, "J2 on far");

        assertThat(Props.judged(far.finding()).demand()).isCloseTo(2051.3, within(0.1));
        assertThat(far.verdict()).isEqualTo(Verdict.PASS);
        assertThat(Simple.check(fails, CheckId.JOIST_NOTCH, "J2 on far").verdict())
                .isEqualTo(Verdict.FAIL);
    }

    /** The shore under the far end is the outermost thing that carries it. */
    @Test
    void aCutEndOverAShoreBeamIsJudged() {
        List<Post> posts = List.of(Plans.post("P1", 0, Plans.RIGID), Plans.post("P2", 1, Plans.RIGID));
        Shore shore = new Shore("A", 3.9, Plans.twoByTen(3, 0), -0.2, 1.4, List.of(), posts);
        JobPlan plan = Simple.plan(resting(List.of(seat("near", 0)), 2000), List.of(shore), new Ground.Unstated());

        assertThat(notches(plan, "J2")).hasSize(2).anyMatch(place -> place.startsWith("J2 on A"));
    }

    private static List<String> notches(JobPlan plan, String joist) {
        return Assessor.assess(plan).checks().stream()
                .filter(r -> r.id() == CheckId.JOIST_NOTCH && r.place().startsWith(joist))
                .filter(r -> r.finding() instanceof CheckResult.Judged)
                .map(CheckResult::place)
                .toList();
    }

    private static Bearing seat(String name, double y) {
        return new Bearing(name, y, 0.089, Plans.RIGID, -Plans.ANY, Plans.ANY, new Fastening.Loose(), List.of());
    }
}
