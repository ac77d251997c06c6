package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;

/** A pressure against what the ground is allowed to take. Every check that presses on the ground asks here. */
public final class GroundPressure {

    private static final Citation GIVEN = Citation.remembered("IBC", "2021", "1806.1, value given for the site");

    /** Least depth of a footing below undisturbed ground, 12 in (m): IBC 2021 1809.4, from memory. */
    private static final double LEAST_DEPTH = 12 * 0.0254;

    private GroundPressure() {}

    /** Tells a pad and its load (N), in units of the ground. */
    public static void tell(Pad pad, Pad.Known weight, double load, Working working) {
        working.onSite();
        working.analysis("P", "greatest load of the post", Dimension.FORCE, load);
        working.plan("B", "pad along the beam", Dimension.LENGTH, pad.along());
        working.plan("L", "pad across the beam", Dimension.LENGTH, pad.across());
        working.plan("t", "thickness of the pad", Dimension.LENGTH, pad.thickness());
        working.step("A", "area", Dimension.AREA, pad.area(), "B × L");
        working.plan("γ", "unit weight of the pad", Dimension.PER_VOLUME, weight.unitWeight());
    }

    /** @param pressure on the ground (Pa), not negative */
    static Finding judge(Ground ground, double pressure) {
        return judge(ground, pressure, "q", Working.OFF);
    }

    /**
     * Judges a pressure.
     *
     * @param pressure on the ground (Pa), not negative
     * @param symbol of it in the record
     */
    public static Finding judge(Ground ground, double pressure, String symbol, Working working) {
        Finding finding = finding(ground, pressure);
        if (!(finding instanceof CheckResult.Judged judged)) {
            return working.compared(symbol, "", finding);
        }
        if (ground instanceof Ground.Presumptive) {
            working.rule(
                    "qa", "allowable pressure of its class", Dimension.STRESS, judged.capacity(), citation(ground), "");
        } else {
            working.plan("qa", "allowable pressure, given for the site", Dimension.STRESS, judged.capacity());
        }
        return working.compared(symbol, "qa", finding);
    }

    private static Finding finding(Ground ground, double pressure) {
        if (ground instanceof Ground.Given given) {
            return judge(given, pressure);
        }
        return ground instanceof Ground.Presumptive presumptive
                ? judge(presumptive, pressure)
                : new CheckResult.NotChecked("the plan says nothing of the ground (declare: ground)");
    }

    private static Finding judge(Ground.Given ground, double pressure) {
        return switch (ground.condition()) {
            case ORGANIC ->
                new CheckResult.Refused(
                        Measure.PRESSURE, pressure, "organic ground and peat carry no pad; have it investigated");
            case FILL -> new CheckResult.NotChecked("the ground is fill; that the value was given for it is not shown");
            case UNDISTURBED, UNSTATED -> new CheckResult.Judged(Measure.PRESSURE, pressure, ground.pressure());
        };
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
                return new CheckResult.NotChecked(
                        "whether the ground is undisturbed is not stated (declare: condition)");
            default:
                return founded(ground, pressure);
        }
    }

    private static Finding founded(Ground.Presumptive ground, double pressure) {
        if (Double.isNaN(ground.foundingDepth())) {
            return new CheckResult.NotChecked("the founding depth is not stated (declare: foundingDepth)");
        }
        return ground.foundingDepth() < LEAST_DEPTH - 1e-9
                ? new CheckResult.NotChecked("the pads are founded less than 12 in below the ground, where presumptive"
                        + " values do not hold (IBC 1809.4, from memory)")
                : new CheckResult.Judged(Measure.PRESSURE, pressure, ground.pressure());
    }

    /** Where the allowable pressure stands. */
    public static Citation citation(Ground ground) {
        return ground instanceof Ground.Presumptive presumptive ? presumptive.citation() : GIVEN;
    }
}
