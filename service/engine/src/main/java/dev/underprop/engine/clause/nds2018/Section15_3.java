package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Outcome;

/**
 * Section 15.3: columns built up of two to five boards, full-length, faces in contact, all of one depth. Boards that do not
 * meet it are columns of their own. Distances of bolts are those for softwoods.
 */
public final class Section15_3 {

    private static final Citation GENERAL = Citation.remembered("NDS", "2018", "15.3.1");
    private static final Citation FACTOR = Citation.remembered("NDS", "2018", "15.3.2, Equation 15.3-1");
    private static final Citation NAILS = Citation.read("NDS", "2018", "15.3.3");
    private static final Citation BOLTS = Citation.remembered("NDS", "2018", "15.3.4");

    private static final int MOST = 5;
    private static final double THINNEST = 1.5 * Units.INCH;

    /** How the boards are joined. */
    public enum By {
        NAILS,
        BOLTS
    }

    /**
     * Nails or bolts through all boards.
     *
     * @param by which
     * @param diameter D (m), positive
     * @param length of nails (m), positive; of bolts not used
     * @param end from the ends of the column to the nearest (m)
     * @param spacing between neighbours in a row (m)
     * @param rows along the column, at least 1
     * @param between rows (m), not used for one row
     * @param edge from the edge of the boards to the nearest row (m)
     * @param detailed nails: neighbours driven from opposite faces; bolts: washers under head and nut, tightened
     */
    public record Pattern(
            By by,
            double diameter,
            double length,
            double end,
            double spacing,
            int rows,
            double between,
            double edge,
            boolean detailed) {}

    private Section15_3() {}

    /**
     * Kf of Equation 15.3-1: 0.60 nailed, 0.75 bolted where the boards buckle over their thickness; over their depth 1.
     * Refused where the boards or their fastening miss a requirement.
     *
     * @param plies number of boards
     * @param thickness of one (m), positive
     * @param depth of one (m), positive
     */
    public static Outcome factor(int plies, double thickness, double depth, Pattern pattern) {
        if (plies < 2 || plies > MOST) {
            return new Outcome.Refused("a built-up column has two to five boards", GENERAL);
        }
        if (!Units.atLeast(Admissible.positive(thickness, "thickness"), THINNEST)) {
            return new Outcome.Refused("the boards are thinner than 1 1/2 in", GENERAL);
        }
        if (pattern.rows < 2 && !Units.atMost(Admissible.positive(depth, "depth"), 3 * thickness)) {
            return refused(pattern, "boards deeper than three thicknesses need two rows");
        }
        return pattern.by == By.NAILS ? nailed(plies, thickness, pattern) : bolted(thickness, pattern);
    }

    private static Outcome nailed(int plies, double thickness, Pattern p) {
        if (!p.detailed) {
            return refused(p, "neighbouring nails are not driven from opposite faces");
        }
        if (!Units.atLeast(p.length, (plies - 0.25) * thickness)) {
            return refused(p, "the nails do not reach through three quarters of the last board");
        }
        Outcome bounds = bounds(p, thickness, new double[] {15, 18, 20, 10, 20, 5, 20});
        return bounds instanceof Outcome.Refused ? bounds : Outcome.of(0.6, "Kf", FACTOR);
    }

    private static Outcome bolted(double thickness, Pattern p) {
        if (!p.detailed) {
            return refused(p, "the bolts lack washers under head and nut");
        }
        Outcome bounds = bounds(p, thickness, new double[] {7, 8.4, 4, 1.5, 10, 1.5, 10});
        return bounds instanceof Outcome.Refused ? bounds : Outcome.of(0.75, "Kf", FACTOR);
    }

    /** Limits in diameters: end from and to, least spacing, between rows from and to, edge from and to. */
    private static Outcome bounds(Pattern p, double thickness, double[] in) {
        double d = Admissible.positive(p.diameter, "D");
        if (outside(p.end, in[0] * d, in[1] * d)) {
            return refused(p, "the end distance is outside its limits");
        }
        if (outside(p.spacing, in[2] * d, 6 * thickness)) {
            return refused(p, "the spacing in a row is outside its limits");
        }
        if (p.rows > 1 && outside(p.between, in[3] * d, in[4] * d)) {
            return refused(p, "the spacing between rows is outside its limits");
        }
        return outside(p.edge, in[5] * d, in[6] * d)
                ? refused(p, "the edge distance is outside its limits")
                : Outcome.of(1, "fastening", p.by == By.NAILS ? NAILS : BOLTS);
    }

    private static boolean outside(double value, double from, double to) {
        return !(Units.atLeast(value, from) && Units.atMost(value, to));
    }

    private static Outcome refused(Pattern p, String reason) {
        return new Outcome.Refused(reason, p.by == By.NAILS ? NAILS : BOLTS);
    }

    /**
     * Column stability factor of a built-up column buckling over the thickness of its boards.
     *
     * @param kf factor of {@link #factor}
     * @param critical FcE (Pa), positive
     * @param compressionStar Fc* (Pa), positive
     */
    public static Cited stability(double kf, double critical, double compressionStar) {
        double solid = Section3_7.stability(critical, compressionStar).value();
        return new Cited(Admissible.positive(kf, "Kf") * solid, "CP", FACTOR);
    }
}
