package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.plan.Assembly;
import dev.underprop.engine.plan.Assembly.Joint;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Restraint;
import dev.underprop.engine.plan.Shore;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Three plies of 2x10 on two posts 2 m apart, 3 kN in the middle: how they are nailed and held, in whole plans. */
class HeldBeamsTest {

    private static final String BEAM = "beam of A";
    private static final List<Load> LOADS = List.of(Simple.point(1, 3000));

    private static JobPlan plan(Restraint roll, Assembly assembly) {
        JobPlan bare = Simple.beam(Plans.twoByTen(3, 0), 2, 0.1, 0.2, LOADS);
        Shore shore = Plies.with(bare.shores().get(0), roll, assembly);
        return Simple.plan(bare.floor(), List.of(shore), new Ground.Unstated());
    }

    private static CheckResult check(CheckId id, String place, Restraint roll, Assembly assembly) {
        return Simple.check(plan(roll, assembly), id, place);
    }

    /** Each post carries 1.5 kN: 37.5 N sideways. */
    @Test
    void rollIsJudgedAtEveryPostUnderItsGreatestLoad() {
        Restraint blocked = new Restraint.Held("blocking", 40);
        CheckResult held = check(CheckId.BEAM_ROLL_RESTRAINT, "P2", blocked, Assembly.UNDECLARED);

        assertThat(((Judged) held.finding()).demand()).isCloseTo(37.5, within(0.01));
        assertThat(held.verdict()).isEqualTo(Verdict.PASS);
        assertThat(check(CheckId.BEAM_ROLL_RESTRAINT, "P1", new Restraint.Free(), Plies.NAILED)
                        .verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(check(CheckId.BEAM_ROLL_RESTRAINT, "P1", new Restraint.Undeclared(), Plies.NAILED)
                        .verdict())
                .isEqualTo(Verdict.NOT_CHECKED);
    }

    @Test
    void pliesAreJudgedOnceABeam() {
        Restraint roll = new Restraint.Undeclared();

        assertThat(check(CheckId.BEAM_PLY_FASTENING, BEAM, roll, Plies.NAILED).verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(check(CheckId.BEAM_PLY_FASTENING, BEAM, roll, Plies.nailed(Plies.nails(0.131, 3, 30)))
                        .verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(check(CheckId.BEAM_PLY_FASTENING, BEAM, roll, Assembly.UNDECLARED)
                        .verdict())
                .isEqualTo(Verdict.NOT_CHECKED);
    }

    /** Two of three plies run through: the greatest ratio of the beam's own checks, half as much again. */
    @Test
    void piecedPliesLeaveTheBeamToTheOthers() {
        Assembly pieced = Plies.nailed(Plies.nails(0.131, 3, 24), new Joint(2, 2));
        JobPlan plan = plan(new Restraint.Undeclared(), pieced);
        double greatest = List.of(CheckId.BEAM_BENDING, CheckId.BEAM_SHEAR, CheckId.BEAM_DEFLECTION_TOTAL).stream()
                .mapToDouble(id -> Simple.check(plan, id, BEAM).ratio())
                .max()
                .orElseThrow();
        CheckResult plies = Simple.check(plan, CheckId.BEAM_PLY_FASTENING, BEAM);

        assertThat(greatest).isPositive();
        assertThat(plies.ratio()).isCloseTo(1.5 * greatest, within(1e-9));
        assertThat(check(
                                CheckId.BEAM_PLY_FASTENING,
                                BEAM,
                                new Restraint.Undeclared(),
                                Plies.nailed(Plies.nails(0.131, 3, 24), new Joint(2, 1)))
                        .verdict())
                .isEqualTo(Verdict.FAIL);
    }
}
