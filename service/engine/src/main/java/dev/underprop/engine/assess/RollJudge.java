package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.nds2018.Section3_3;
import dev.underprop.engine.plan.Restraint;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;

/**
 * A shore beam against rolling over on the head of a post. What holds it upright takes a part of the post's load sideways at
 * the beam's top edge. Declared free, it must be no deeper than broad; plies count together only where they are nailed.
 */
final class RollJudge {

    static final Citation RULE = Citation.remembered(
            "NDS", "2018", "3.3.3.1 and 3.3.3.4; 2.5 % of the load sideways by BS 5975 and EN 12812 practice");

    private RollJudge() {}

    /** As {@link #judge(Shore, double, Working)}, without a record. */
    static Finding judge(Shore shore, double load) {
        return judge(shore, load, Working.OFF);
    }

    /** @param load greatest load of the post (N), not negative */
    static Finding judge(Shore shore, double load, Working working) {
        double force = SidewaysJudge.notional(load, working);
        Restraint roll = shore.bracing().roll();
        if (roll instanceof Restraint.Held held) {
            return Double.isNaN(held.capacity())
                    ? new CheckResult.Condition(true, Measure.FORCE, force, "declared held upright by " + held.by())
                    : SidewaysJudge.held(force, held.capacity(), working);
        }
        return roll instanceof Restraint.Free
                ? working.compared("H", "", free(shore, force))
                : new CheckResult.NotChecked(
                        "what holds the beam against rolling over on its posts is not declared (declare: roll)");
    }

    private static Finding free(Shore shore, double force) {
        double depth = shore.beam().depth();
        Outcome together = Section3_3.uprightAtBearings(shore.beam().breadth(), depth, false);
        Outcome alone = Section3_3.uprightAtBearings(shore.beam().ply().breadth(), depth, false);
        if (together instanceof Outcome.Refused refused) {
            return refusal(force, refused);
        }
        return alone instanceof Outcome.Refused refused ? byPlies(shore, force, refused) : stands();
    }

    private static Finding byPlies(Shore shore, double force, Outcome.Refused alone) {
        Finding nailing = PlyJudge.nailing(shore);
        if (nailing instanceof CheckResult.NotChecked) {
            return new CheckResult.NotChecked(
                    "nothing holds the beam upright, and it is no deeper than broad only if its plies are fastened to each"
                            + " other, which is not known (declare: assembly)");
        }
        return nailing instanceof CheckResult.Condition condition && condition.met() ? stands() : refusal(force, alone);
    }

    private static Finding stands() {
        return new CheckResult.Condition(
                true,
                Measure.FORCE,
                0,
                "nothing holds the beam upright; it is no deeper than broad, and needs nothing");
    }

    private static Finding refusal(double force, Outcome.Refused refused) {
        return new CheckResult.Refused(Measure.FORCE, force, refused.reason() + ", and nothing holds it");
    }
}
