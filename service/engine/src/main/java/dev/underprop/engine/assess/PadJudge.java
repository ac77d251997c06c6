package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.pad.GroundPressure;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;

/** Contact pressure of a pad, its own weight included, against the allowable bearing pressure of the ground. */
final class PadJudge {

    private PadJudge() {}

    /** As {@link #judge(Post, Ground, double, Working)}, without a record. */
    static Finding judge(Post post, Ground ground, double load) {
        return judge(post, ground, load, Working.OFF);
    }

    /** @param load on the pad from the post (N) */
    static Finding judge(Post post, Ground ground, double load, Working working) {
        if (!(post.footing() instanceof Pad pad)) {
            return new CheckResult.NotChecked("no pad is named under this post (declare: pad)");
        }
        if (!(pad.weight() instanceof Pad.Known weight)) {
            return new CheckResult.NotChecked(
                    "the unit weight of pad " + pad.name() + " is not given (declare: unitWeight)");
        }
        GroundPressure.tell(pad, weight, load, working);
        double pressure = working.step(
                "q",
                "pressure, the pad's weight included",
                Dimension.STRESS,
                load / pad.area() + weight.unitWeight() * pad.thickness(),
                "P / A + γ × t");
        return GroundPressure.judge(ground, pressure, "q", working);
    }

    static Citation citation(Ground ground) {
        return GroundPressure.citation(ground);
    }
}
