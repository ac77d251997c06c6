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

    /** Allowable pressures are taken to hold up to this share of sideways force: common practice, no source. */
    private static final double MOST_TILT = 0.1;

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
        if (pad.weightOf(new Pad.Known(0, true)) > 0) {
            working.plan(
                    "Ws",
                    "weight of the steel plate on the mat, at 490 pcf",
                    Dimension.FORCE,
                    pad.weightOf(new Pad.Known(0, true)));
        }
    }

    /** Formula of the load with the pad's own weight, in the symbols of {@link #tell}. */
    static String total(Pad pad) {
        return "P + γ × t × A" + (pad.weightOf(new Pad.Known(0, true)) > 0 ? " + Ws" : "");
    }

    /** Tells the sideways force over the upright one and returns it. @param symbol of the load with the pad's weight */
    static double tilt(PadLoad load, double total, String symbol, Working working) {
        working.plan("i", "sideways force over load", Dimension.NUMBER, load.lean());
        return working.step(
                "ψ",
                "sideways over upright force under the pad",
                Dimension.NUMBER,
                load.tilt(total),
                load.greatest() > 0 ? "i × P / " + symbol : "0 × i");
    }

    /**
     * Judges the ground under a pad, and what weaker layer may lie below.
     *
     * @param tread how the pad presses on it
     * @param symbol of the pressure in the record
     */
    static Finding judge(Ground ground, Tread tread, String symbol, Working working) {
        Working told = working.branch();
        Finding own = alone(ground.top(), tread, told);
        Finding finding = ground instanceof Ground.Layered layered ? WeakLayer.judge(layered, tread, own) : own;
        if (!(finding instanceof CheckResult.Judged judged)) {
            return working.compared(symbol, "", finding);
        }
        if (!finding.equals(own)) {
            working.analysis("qs", "pressure that governs with the weaker layer", Dimension.STRESS, judged.demand());
            working.plan("qa", "what is allowed there", Dimension.STRESS, judged.capacity());
            return working.compared("qs", "qa", finding);
        }
        working.adopt(told);
        if (ground.top() instanceof Ground.Given) {
            working.plan("qa", "allowable pressure, given for the site", Dimension.STRESS, judged.capacity());
        } else if (!(ground.top() instanceof Ground.Strength)) {
            String what = "allowable pressure of its class";
            working.rule("qa", what, Dimension.STRESS, judged.capacity(), citation(ground), "");
        }
        return working.compared(symbol, "qa", finding);
    }

    private static Finding alone(Ground ground, Tread tread, Working working) {
        if (ground instanceof Ground.Strength strength) {
            return GroundStrength.judge(strength, tread, working);
        }
        Finding finding = ground instanceof Ground.Given given
                ? judge(given, tread.pressure())
                : ground instanceof Ground.Presumptive presumptive
                        ? judge(presumptive, tread.pressure())
                        : new CheckResult.NotChecked("the plan says nothing of the ground (declare: ground)");
        return finding instanceof CheckResult.Judged && tread.tilt() > MOST_TILT
                ? new CheckResult.NotChecked(
                        "posts may push sideways with more than a tenth of their load, and allowable"
                                + " pressures are for loads that are all but upright (declare: plumb, or the strength of the ground)")
                : finding;
    }

    private static Finding judge(Ground.Given ground, double pressure) {
        return switch (ground.condition()) {
            case ORGANIC ->
                new CheckResult.Refused(
                        Measure.PRESSURE, pressure, "organic ground and peat carry no pad; have it investigated");
            case FILL -> new CheckResult.NotChecked("the ground is fill; that the value was given for it is not shown");
            case UNKNOWN -> unproved("unknown");
            case UNSTATED -> unproved("not stated");
            case UNDISTURBED -> new CheckResult.Judged(Measure.PRESSURE, pressure, ground.pressure());
        };
    }

    /** Whoever gave the value gave it for some ground; that this is it, as it is found, the plan has to say. */
    private static Finding unproved(String condition) {
        return new CheckResult.NotChecked("the condition of the ground is " + condition
                + ", so that the value is not shown to hold for it (declare: condition)");
    }

    private static Finding judge(Ground.Presumptive ground, double pressure) {
        switch (ground.condition()) {
            case FILL:
                return new CheckResult.Refused(
                        Measure.PRESSURE, pressure, "presumptive values do not hold for fill; have it investigated");
            case ORGANIC:
                return new CheckResult.Refused(
                        Measure.PRESSURE, pressure, "organic ground has no presumptive value; have it investigated");
            case UNSTATED, UNKNOWN:
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
        if (ground.top() instanceof Ground.Strength strength) {
            return strength.method().citation();
        }
        return ground.top() instanceof Ground.Presumptive presumptive ? presumptive.citation() : GIVEN;
    }
}
