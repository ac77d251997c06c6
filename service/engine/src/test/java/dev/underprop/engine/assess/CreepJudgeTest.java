package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.plan.Assembly;
import dev.underprop.engine.plan.Circumstances;
import dev.underprop.engine.plan.Intake;
import dev.underprop.engine.plan.Intake.Reply;
import dev.underprop.engine.plan.Intensity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.section.RectangularSection;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Three plies of 2x10 on two posts, span 3 m, a load in the middle: PL³/48EI, and L/240 of 12.5 mm allowed. */
class CreepJudgeTest {

    private static final Member BEAM = Plans.twoByTen(3, 0);
    private static final double SPAN = 3;

    private static CheckResult check(double dead, double live, Reply stays) {
        Intake intake = new Intake(List.of(new Intake.Answer(Intake.Question.LONG_DURATION, stays, "", "")));
        Circumstances exact = Plans.EXACT;
        Load load = new Load.PointOnShore("point", new Intensity(dead, live, 0, 0), 0, SPAN / 2);
        JobPlan plan = Plans.with(
                Simple.beam(BEAM, SPAN, 0, 0.1, List.of(load)),
                new Circumstances(exact.floorRestraint(), exact.lateral(), exact.excavation(), intake, exact.limits()));
        return Simple.check(plan, CheckId.BEAM_DEFLECTION_LONG_TERM, "beam of A");
    }

    private static double sag(double load) {
        return load * SPAN * SPAN * SPAN / 48 / TimberCapacity.rigidity(BEAM);
    }

    /** Twice what dead load does, and once what live load does. */
    @Test
    void deadLoadCountsTwice() {
        Judged judged = Props.judged(check(2000, 1500, Reply.YES).finding());

        assertThat(judged.demand()).isCloseTo(2 * sag(2000) + sag(1500), within(1e-9));
        assertThat(judged.capacity()).isCloseTo(SPAN / 240, within(1e-12));
    }

    /** The load that alone would bring it to 9/10 of the limit at once passes as live load, and fails as dead load. */
    @Test
    void aBeamThatStandsAtOnceMayFailInTime() {
        double load = 0.9 * SPAN / 240 / sag(1);

        assertThat(check(0.05 * load, 0.95 * load, Reply.YES).verdict()).isEqualTo(Verdict.PASS);
        assertThat(check(load, 0, Reply.YES).verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void theIntakeSaysWhetherItStandsLong() {
        assertThat(check(2000, 0, Reply.NO).verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
        assertThat(check(2000, 0, Reply.UNKNOWN).verdict()).isEqualTo(Verdict.NOT_CHECKED);
    }

    /** 10 mm at once, of which 4 mm stay: 10 + 4. */
    @Test
    void theLastingPartIsAddedOnceMore() {
        Judged together = Props.judged(CreepJudge.together(new Judged(Measure.DEFLECTION, 0.010, 0.012), 0.004));

        assertThat(together.demand()).isCloseTo(0.014, within(1e-15));
        assertThat(together.capacity()).isEqualTo(0.012);
    }

    /** One of three plies is pieced over a post: what creeps is half as much again on the two that run through. */
    @Test
    void piecedPliesCreepWithNothing() {
        WoodGrade strong = Simple.grade(100e6, 50e6, 50e6, 9e9);
        RectangularSection ply = new RectangularSection(1.5 * Plans.INCH, 5.5 * Plans.INCH);
        Member beam = new Member("beam", ply, 3, strong, false, Member.Moisture.DRY, 0);
        Load load = new Load.PointOnShore("point", new Intensity(400, 300, 0, 0), 0, SPAN / 2);
        JobPlan bare = Simple.beam(beam, SPAN, 0, 0.1, List.of(load));
        Intake intake = new Intake(List.of(new Intake.Answer(Intake.Question.LONG_DURATION, Reply.YES, "", "")));
        Shore pieced =
                Plies.with(bare.shores().get(0), Plies.nailed(Plies.nails(0.131, 3, 24), new Assembly.Joint(1, 0)));
        Circumstances exact = Plans.EXACT;
        JobPlan plan = Plans.with(
                Simple.plan(bare.floor(), List.of(pieced), bare.ground()),
                new Circumstances(exact.floorRestraint(), exact.lateral(), exact.excavation(), intake, exact.limits()));
        double sag = SPAN * SPAN * SPAN / 48 / TimberCapacity.rigidity(beam);

        assertThat(Props.judged(Simple.check(plan, CheckId.BEAM_PLY_FASTENING, "beam of A")
                                .finding())
                        .demand())
                .isCloseTo(1.5 * (2 * 400 + 300) * sag, within(1e-9));
    }
}
