package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Citation;

/**
 * A crib: timbers of alternate layers pressed across the grain where they cross. Every layer's timbers overhang the outermost
 * crossing by at least their width, so that the outer crossings stand one and a half widths within the pad's sides. No grade of
 * the timbers is declared, so that their bending and shear are not worked out: a crib passes only where none has to span, with
 * the base plate over all crossings and no more between these than a load spreads in the layer on the ground.
 */
final class CribPad {

    static final Citation RULE = Citation.remembered(
            "public urban search and rescue shoring guides",
            "2009",
            "cribbing: crossings times bearing, height 1.5 (two timbers a layer) or 3 times the width");

    /** Height over width: two timbers a layer, and more. */
    private static final double TWO = 1.5;

    private static final double MORE = 3;

    /** Slack for sums of converted lengths (m). */
    private static final double FIT = 1e-9;

    private CribPad() {}

    /**
     * @param base plate on it
     * @param load greatest load of the allowable stress combinations (N)
     * @param off how far off the middle it may stand (m)
     */
    static Finding judge(Pad pad, Pad.Stack crib, Plate base, double load, double off) {
        if (!crib.solid()) {
            return new CheckResult.NotChecked(
                    "that the crib's layers on the ground and under the post are solid is not stated");
        }
        double x = pad.along() / 2 - 1.5 * crib.timber();
        double y = pad.across() / 2 - 1.5 * crib.timber();
        double least = crib.members() * crib.timber() / 2 - crib.timber() / 2;
        if (Math.min(x, y) < least - FIT) {
            return new CheckResult.Refused(
                    Measure.FORCE,
                    load,
                    "the crib is too narrow for its timbers, which must stand out beyond the outer crossings by their"
                            + " width");
        }
        double width = 2 * Math.min(x, y) + crib.timber();
        if (pad.thickness() > (crib.members() == 2 ? TWO : MORE) * width + FIT) {
            return new CheckResult.Refused(Measure.FORCE, load, "the crib is too tall for the width of its crossings");
        }
        double uneven = shift(crib, off / x) + shift(crib, off / y);
        if (uneven > 1) {
            return new CheckResult.Refused(
                    Measure.FORCE, load, "the load may stand so far off the middle that a crossing lifts");
        }
        double mean = load / (crib.members() * crib.members());
        double crossing = crib.timber() * crib.timber();
        Judged pressed = new Judged(Measure.STRESS, mean * (1 + uneven) / crossing, crib.bearing());
        return pressed.demand() > pressed.capacity() || !spans(pad, crib, base, x, y)
                ? pressed
                : new CheckResult.NotChecked(
                        "the timbers of the crib bend between its crossings, or from the base plate to them, which is"
                                + " not worked out: no grade is known of them");
    }

    /**
     * Whether a timber has to carry load sideways to or from a crossing. A load spreads in wood by no more than it goes down: in
     * the layer on the ground by a width from each crossing.
     *
     * @param x from the middle to the outer crossings, along (m)
     * @param y the same, across (m)
     */
    private static boolean spans(Pad pad, Pad.Stack crib, Plate base, double x, double y) {
        double reach = crib.timber() / 2 + pad.statedOffset();
        double between = 2 * Math.max(x, y) / (crib.members() - 1) - crib.timber();
        return base.along() / 2 < x + reach - FIT
                || base.across() / 2 < y + reach - FIT
                || between > 2 * crib.timber() + FIT;
    }

    /** What a load off the middle adds to the outermost of equally spaced points, over the mean. */
    private static double shift(Pad.Stack crib, double share) {
        int m = crib.members();
        return 3.0 * (m - 1) / (m + 1) * share;
    }
}
