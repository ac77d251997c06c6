package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.standard.Citation;

/** Contact pressure of a pad, its own weight included, against the allowable bearing pressure of the ground. */
final class PadJudge {

    private static final Citation GIVEN = Citation.remembered("IBC", "2021", "1806.1, value given for the site");

    private PadJudge() {}

    /** @param load on the pad from the post (N) */
    static Finding judge(Post post, Ground ground, double load) {
        if (!(post.footing() instanceof Pad pad)) {
            return new CheckResult.NotChecked("no pad is named under this post");
        }
        if (!(pad.weight() instanceof Pad.Known weight)) {
            return new CheckResult.NotChecked("the unit weight of pad " + pad.name() + " is not given");
        }
        double pressure = load / pad.area() + weight.unitWeight() * pad.thickness();
        if (ground instanceof Ground.Given given) {
            return new CheckResult.Judged(Measure.PRESSURE, pressure, given.pressure());
        }
        return ground instanceof Ground.Presumptive presumptive
                ? judge(presumptive, pressure)
                : new CheckResult.NotChecked("the plan says nothing of the ground");
    }

    private static Finding judge(Ground.Presumptive ground, double pressure) {
        switch (ground.condition()) {
            case FILL:
                return new CheckResult.Refused(
                        Measure.PRESSURE, pressure, "presumptive values do not hold for fill; have it investigated");
            case ORGANIC:
                return new CheckResult.Refused(
                        Measure.PRESSURE, pressure, "organic ground has no presumptive value; have it investigated");
            case UNSTATED:
                return new CheckResult.NotChecked("whether the ground is undisturbed is not stated");
            default:
                return ground.foundingDepthStated()
                        ? new CheckResult.Judged(Measure.PRESSURE, pressure, ground.pressure())
                        : new CheckResult.NotChecked("the founding depth is not stated");
        }
    }

    static Citation citation(Ground ground) {
        return ground instanceof Ground.Presumptive presumptive ? presumptive.citation() : GIVEN;
    }
}
