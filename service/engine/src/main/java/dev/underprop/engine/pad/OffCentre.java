package dev.underprop.engine.pad;

import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;

/**
 * How much harder a load off the middle presses a corner of a stiff rectangular pad. The post stands off the middle by the
 * centring that the plan states and pushes sideways besides, which carries its load further off on the way down through the
 * pad. Both may point in the same direction, and that may be the worst there is: the direction is not known.
 */
final class OffCentre {

    static final Citation PLANE = Citation.remembered(
            "statics", "", "plane pressure under a stiff pad within the kern, 1 + 6 e/B + 6 e/L, no tension");

    private OffCentre() {}

    /**
     * How far off the middle (m) the load passes through the pad's underside.
     *
     * @param lean sideways force of the post over its load, not negative
     */
    static double of(Pad pad, Pad.Within centring, double lean) {
        return centring.distance() + lean * pad.thickness();
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
