package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Upright stress below a load on ground, over the pressure or for a force. The ground is elastic and has no end. */
public final class Stress {

    private static final Citation POINT = Citation.read(
            "Das, Principles of Geotechnical Engineering", "companion edition", "10.3, point load (Boussinesq 1885)");
    private static final Citation CORNER = Citation.remembered("Newmark", "1935", "corner of a loaded rectangle");
    private static final Citation CENTRE =
            Citation.read("EM 1110-1-1905", "31 July 2025", "equation 6-9, centre of a square");
    private static final Citation SPREAD =
            Citation.remembered("common practice, no source", "", "load that spreads by 1 in 2 on every side");

    private Stress() {}

    /**
     * Below a force on the surface (Pa).
     *
     * @param force (N)
     * @param aside distance in plan (m), not negative
     * @param depth (m), positive
     */
    public static Cited point(double force, double aside, double depth) {
        Admissible.positive(depth, "depth");
        double square = aside * aside + depth * depth;
        double fifth = square * square * Math.sqrt(square);
        return new Cited(3 * force * depth * depth * depth / (2 * StrictMath.PI * fifth), "dsigma", POINT);
    }

    /**
     * Share of the pressure below a corner of a loaded rectangle.
     *
     * @param m side over depth, positive
     * @param n other side over depth, positive
     */
    public static Cited corner(double m, double n) {
        double sum = m * m + n * n + 1;
        double root = 2 * m * n * Math.sqrt(sum);
        double first = root / (sum + m * m * n * n) * (sum + 1) / sum;
        // The arc tangent turns over where its divisor becomes negative: atan2 has it right on both sides.
        double second = StrictMath.atan2(root, sum - m * m * n * n);
        return new Cited((first + second) / (4 * StrictMath.PI), "I", CORNER);
    }

    /**
     * Share of the pressure at a point below a loaded rectangle or beside it: four rectangles with a corner above the point.
     *
     * @param along size in x (m), positive
     * @param across size in y (m), positive
     * @param x from its middle to the point (m)
     * @param y the same in y (m)
     * @param depth (m), positive
     */
    public static double share(double along, double across, double x, double y, double depth) {
        double right = along / 2 - x;
        double left = along / 2 + x;
        double above = across / 2 - y;
        double below = across / 2 + y;
        return part(right, above, depth)
                + part(left, above, depth)
                + part(right, below, depth)
                + part(left, below, depth);
    }

    private static double part(double one, double other, double depth) {
        if (one == 0 || other == 0) {
            return 0;
        }
        double value = corner(Math.abs(one) / depth, Math.abs(other) / depth).value();
        return one < 0 == other < 0 ? value : -value;
    }

    /**
     * Share of the pressure below the centre of a loaded square, in the approximation of the manual.
     *
     * @param breadth (m), positive
     * @param depth (m), positive
     */
    public static Cited centre(double breadth, double depth) {
        double half = breadth / (2 * depth);
        return new Cited(1 - StrictMath.pow(1 / (1 + half * half), 1.76), "I", CENTRE);
    }

    /**
     * Mean pressure of a force at a depth when it spreads by 1 in 2 (Pa).
     *
     * @param force (N)
     * @param along size in x (m), positive
     * @param across size in y (m), positive
     * @param depth (m), not negative
     */
    public static Cited spread(double force, double along, double across, double depth) {
        return new Cited(force / ((along + depth) * (across + depth)), "dsigma", SPREAD);
    }
}
