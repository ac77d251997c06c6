package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;

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
    static Finding judge(Pad pad, Pad.Stack crib, Plate base, double load, double off, Working working) {
        working.analysis("P", "greatest load of the post", Dimension.FORCE, load);
        if (!crib.solid()) {
            return new CheckResult.NotChecked(
                    "that the crib's layers on the ground and under the post are solid is not stated (declare: solidEnds)");
        }
        double x = pad.along() / 2 - 1.5 * crib.timber();
        double y = pad.across() / 2 - 1.5 * crib.timber();
        double least = crib.members() * crib.timber() / 2 - crib.timber() / 2;
        if (Math.min(x, y) < least - FIT) {
            return refused(
                    load,
                    "the crib is too narrow for its timbers, which must stand out beyond the outer crossings by their"
                            + " width",
                    working);
        }
        double width = 2 * Math.min(x, y) + crib.timber();
        if (pad.thickness() > (crib.members() == 2 ? TWO : MORE) * width + FIT) {
            return refused(load, "the crib is too tall for the width of its crossings", working);
        }
        working.plan("n", "timbers in a layer", Dimension.NUMBER, crib.members());
        working.plan("w", "width of a timber", Dimension.LENGTH, crib.timber());
        working.plan("B", "crib along the beam", Dimension.LENGTH, pad.along());
        working.plan("L", "crib across the beam", Dimension.LENGTH, pad.across());
        working.step("x", "middle to the outer crossings, along", Dimension.LENGTH, x, "B / 2 - 1.5 × w");
        working.step("y", "the same, across", Dimension.LENGTH, y, "L / 2 - 1.5 × w");
        double uneven = working.step(
                "s",
                "more on the outermost crossing, over the mean",
                Dimension.NUMBER,
                shift(crib, off / x) + shift(crib, off / y),
                "3 × ( n - 1 ) / ( n + 1 ) × ( e / x + e / y )");
        if (uneven > 1) {
            return refused(load, "the load may stand so far off the middle that a crossing lifts", working);
        }
        double mean = load / (crib.members() * crib.members());
        double crossing = crib.timber() * crib.timber();
        double stress = working.rule(
                "fc⊥",
                "stress at a crossing",
                Dimension.STRESS,
                mean * (1 + uneven) / crossing,
                RULE,
                "P / n^2 × ( 1 + s ) / w^2");
        working.plan("F'c⊥", "what its timber bears across the grain", Dimension.STRESS, crib.bearing());
        Judged pressed = Worst.compared(working, "fc⊥", "F'c⊥", new Judged(Measure.STRESS, stress, crib.bearing()));
        return pressed.demand() > pressed.capacity() || !spans(pad, crib, base, x, y)
                ? pressed
                : new CheckResult.NotChecked(
                        "the timbers of the crib bend between its crossings, or from the base plate to them, which is"
                                + " not worked out: no grade is known of them");
    }

    private static Finding refused(double load, String reason, Working working) {
        return working.compared("P", "", new CheckResult.Refused(Measure.FORCE, load, reason));
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
