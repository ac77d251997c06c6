package dev.underprop.engine.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.plan.Assembly;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Restraint;
import dev.underprop.engine.plan.Shore;
import org.junit.jupiter.api.Test;

/** A beam on a post of 20 kN: 500 N sideways at its top. A 2x10 ply is 1.5 in by 9.25 in. */
class RollJudgeTest {

    private static final Restraint FREE = new Restraint.Free();

    private static Finding judge(int plies, Restraint roll, Assembly assembly) {
        Shore shore = Props.shore(Plans.twoByTen(plies, 0), -1.5);
        return RollJudge.judge(Plies.with(shore, roll, assembly), 20_000);
    }

    private static boolean met(Finding finding) {
        return ((CheckResult.Condition) finding).met();
    }

    @Test
    void whatIsNotDeclaredIsNotChecked() {
        Finding finding = judge(3, new Restraint.Undeclared(), Assembly.UNDECLARED);

        assertThat(Props.reason(finding)).contains("is not declared");
    }

    @Test
    void aStatedCapacityIsCompared() {
        CheckResult.Judged judged = Props.judged(judge(3, new Restraint.Held("blocking", 400), Assembly.UNDECLARED));

        assertThat(judged.demand()).isCloseTo(500, within(1e-9));
        assertThat(judged.capacity()).isEqualTo(400);
    }

    @Test
    void heldWithoutACapacityTellsTheForce() {
        CheckResult.Condition held =
                (CheckResult.Condition) judge(3, new Restraint.Held("blocking", Double.NaN), Assembly.UNDECLARED);

        assertThat(held.met()).isTrue();
        assertThat(held.value()).isCloseTo(500, within(1e-9));
        assertThat(held.reason()).contains("blocking");
    }

    /** Three plies: 9.25 / 4.5 = 2.06; one: 6.17. */
    @Test
    void aDeepBeamLeftFreeIsRefused() {
        assertThat(Props.refusal(judge(3, FREE, Plies.NAILED))).contains("2.06 times as deep");
        assertThat(Props.refusal(judge(1, FREE, Assembly.UNDECLARED))).contains("6.17 times as deep");
    }

    /** Seven plies are 10.5 in broad, together. */
    @Test
    void aBroadBeamNeedsNothingIfItsPliesActTogether() {
        assertThat(met(judge(7, FREE, Plies.NAILED))).isTrue();
        assertThat(Props.reason(judge(7, FREE, Assembly.UNDECLARED))).contains("which is not known");
        assertThat(Props.refusal(judge(7, FREE, Plies.nailed(Plies.nails(0.1, 3, 24)))))
                .contains("6.17 times as deep");
    }

    @Test
    void aSquareTimberNeedsNothing() {
        Shore shore = Plies.with(Props.shore(9.25 * Plans.INCH, Member.Moisture.DRY), FREE, Assembly.UNDECLARED);

        assertThat(met(RollJudge.judge(shore, 20_000))).isTrue();
    }
}
