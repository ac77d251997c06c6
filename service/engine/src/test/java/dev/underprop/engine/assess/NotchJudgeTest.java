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
import dev.underprop.engine.plan.Intake.Reply;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Joist;
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
}
