package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.plan.Member;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a stated treatment does to a member's values and to its checks. */
class TreatmentJudgeTest {

    @ParameterizedTest
    @EnumSource(names = {"UNTREATED", "NOT_INCISED", "INCISED"})
    void whatIsStatedIsSettled(Member.Treated treatment) {
        assertThat(TreatmentJudge.judge(treatment)).isInstanceOf(CheckResult.NotApplicable.class);
    }

    @ParameterizedTest
    @EnumSource(names = {"UNSTATED", "INCISING_UNSTATED", "FIRE_RETARDANT"})
    void whatIsNotKnownIsNotChecked(Member.Treated treatment) {
        assertThat(TreatmentJudge.judge(treatment)).isInstanceOf(CheckResult.NotChecked.class);
    }

    /** Hem-Fir No.2 2x10: Fb 850 psi x CF 1.1 x 0.80, Fv 150 psi x 0.80, E 1 300 000 psi x 0.95, Fc-perp 405 psi. */
    @Test
    void incisedTimberIsWeaker() {
        Member incised = treated(Member.Treated.INCISED);
        TimberCapacity capacity = new TimberCapacity(incised, 1);
        assertThat(capacity.bending(LoadDuration.TEN_YEARS, 0) / Plans.PSI).isCloseTo(748, within(1e-6));
        assertThat(capacity.shear(LoadDuration.TEN_YEARS) / Plans.PSI).isCloseTo(120, within(1e-6));
        assertThat(capacity.bearing() / Plans.PSI).isCloseTo(405, within(1e-6));
        assertThat(TimberCapacity.rigidity(incised) / incised.ply().inertia() / Plans.PSI)
                .isCloseTo(1_235_000, within(1e-3));
    }

    @Test
    void timberNotIncisedKeepsItsValues() {
        TimberCapacity capacity = new TimberCapacity(treated(Member.Treated.NOT_INCISED), 1);
        assertThat(capacity.bending(LoadDuration.TEN_YEARS, 0) / Plans.PSI).isCloseTo(935, within(1e-6));
        assertThat(capacity.shear(LoadDuration.TEN_YEARS) / Plans.PSI).isCloseTo(150, within(1e-6));
    }

    private static Member treated(Member.Treated treatment) {
        Member plain = Plans.twoByTen(1, 0);
        return new Member(
                plain.label(),
                plain.ply(),
                plain.plies(),
                plain.grade(),
                plain.nominal(),
                plain.moisture(),
                plain.weight(),
                new Member.Details(new Member.Stamped(), new Member.Whole(), treatment));
    }
}
