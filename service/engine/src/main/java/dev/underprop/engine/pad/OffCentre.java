package dev.underprop.engine.pad;

import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Outcome;

/**
 * How much harder a load off the middle presses a corner of a stiff rectangular pad. The post stands off the middle by the
 * centring that the plan states, its load stands off its own middle by as much as the post is judged with, and it pushes
 * sideways besides, which carries the load further off on the way down through the pad. All may point in the same direction,
 * and that may be the worst there is: the direction is not known.
 */
final class OffCentre {

    static final Citation PLANE = Citation.remembered(
            "statics", "", "plane pressure under a stiff pad within the kern, 1 + 6 e/B + 6 e/L, no tension");

    private static final Citation USUAL =
            Citation.remembered("BS 5975", "", "practice for props, 25 mm where it is not stated");

    private OffCentre() {}

    /** How far off the middle (m) the load passes through the pad's underside. */
    static double of(Pad pad, Pad.Within centring, PadLoad load, Working working) {
        working.plan("c", "post off the middle of its pad", Dimension.LENGTH, centring.distance());
        double foot = atFoot(load.foot(), working);
        working.plan("i", "sideways force over load", Dimension.NUMBER, load.lean());
        working.plan("t", "thickness of the pad", Dimension.LENGTH, pad.thickness());
        return working.step(
                "e",
                "load off the middle at the pad's underside",
                Dimension.LENGTH,
                centring.distance() + foot + load.lean() * pad.thickness(),
                "c + ef + i × t");
    }

    /** As {@link #factor(Pad, double)}, told. @param symbol of the distance */
    static Outcome factor(Pad pad, double off, String symbol, Working working) {
        Outcome factor = factor(pad, off);
        working.plan("B", "pad along the beam", Dimension.LENGTH, pad.along());
        working.plan("L", "pad across the beam", Dimension.LENGTH, pad.across());
        working.rule(
                "m",
                factor,
                "worst corner over the mean",
                Dimension.NUMBER,
                "1 + 6 × " + symbol + " × root( 1 / B^2 + 1 / L^2 )");
        return factor;
    }

    private static double atFoot(PadLoad.Foot foot, Working working) {
        String what = "load off the middle of the post's foot";
        return foot.stated()
                ? working.plan("ef", what, Dimension.LENGTH, foot.off())
                : working.rule("ef", what + ", which nobody states", Dimension.LENGTH, foot.off(), USUAL, "");
    }

    /**
     * Greatest pressure over the mean. With the load off by e at any angle, e/B and e/L have the greatest sum
     * e times the root of 1/B² + 1/L².
     *
     * @param off how far off the middle (m), not negative
     * @return refused outside the kern: part of the pad would press on nothing
     */
    static Outcome factor(Pad pad, double off) {
        double along = 1 / pad.along();
        double across = 1 / pad.across();
        double share = 6 * off * Math.sqrt(along * along + across * across);
        return share > 1
                ? new Outcome.Refused(
                        "the load may stand outside the middle of the pad, so that a part of the pad lifts", PLANE)
                : Outcome.of(1 + share, "q max / q", PLANE);
    }
}
