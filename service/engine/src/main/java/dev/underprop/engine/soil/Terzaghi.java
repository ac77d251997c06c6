package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Citation;

/**
 * Terzaghi (1943): general shear under a rough base, its depth no more than a load beside it. Nc and Nq in closed form. N gamma
 * has none: Terzaghi read it off a chart; Kumbhojkar (1993) worked it out anew, and differs by a quarter. Each is a method of
 * its own. Between two rows the row of the smaller angle holds, which is the safe side.
 */
final class Terzaghi {

    static final Citation CHART = Citation.read(
            "Terzaghi, Theoretical Soil Mechanics",
            "1943",
            "factors read on a public reference page; shapes from memory");
    static final Citation ANEW = Citation.remembered(
            "Das, Principles of Foundation Engineering",
            "companion edition",
            "Terzaghi's formula with N gamma by Kumbhojkar; values at 20, 30 and 35 degrees read, the others from memory");

    /** N gamma off Terzaghi's chart, as tabulated. */
    private static final double[][] CHARTED = {
        {0, 0},
        {5, 0.5},
        {10, 1.2},
        {15, 2.5},
        {20, 5},
        {25, 9.7},
        {30, 19.7},
        {34, 35},
        {35, 42.4},
        {40, 100.4},
        {45, 297.5}
    };

    /** N gamma by Kumbhojkar, degree by degree from 0. */
    private static final double[] KUMBHOJKAR = {
        0, 0.01, 0.04, 0.06, 0.10, 0.14, 0.20, 0.27, 0.35, 0.44, 0.56, 0.69, 0.85, 1.04, 1.26, 1.52, 1.82, 2.18, 2.59,
        3.07, 3.64, 4.31, 5.09, 6.00, 7.08, 8.34, 9.84, 11.60, 13.70, 16.18, 19.13, 22.65, 26.87, 31.94, 38.04, 45.41,
        54.36, 65.27, 78.61, 95.03, 115.31, 140.51, 171.99, 211.56, 261.60, 325.34
    };

    /** An angle that was written in degrees is taken for that degree (degrees). */
    private static final double ROUNDING = 1e-9;

    /** Nc without friction, 1.5 pi + 1 as Terzaghi rounds it. */
    private static final double WITHOUT_FRICTION = 5.7;

    private Terzaghi() {}

    static Factors charted(double friction) {
        double degrees = StrictMath.toDegrees(friction) + ROUNDING;
        double weight = 0;
        for (double[] row : CHARTED) {
            weight = row[0] <= degrees ? row[1] : weight;
        }
        return new Factors(cohesion(friction), overburden(friction), weight);
    }

    static Factors kumbhojkar(double friction) {
        int degree = (int) (StrictMath.toDegrees(friction) + ROUNDING);
        return new Factors(cohesion(friction), overburden(friction), KUMBHOJKAR[degree]);
    }

    private static double overburden(double friction) {
        double a = StrictMath.exp((0.75 * StrictMath.PI - friction / 2) * StrictMath.tan(friction));
        double c = StrictMath.cos(StrictMath.PI / 4 + friction / 2);
        return a * a / (2 * c * c);
    }

    private static double cohesion(double friction) {
        return friction > 0 ? (overburden(friction) - 1) / StrictMath.tan(friction) : WITHOUT_FRICTION;
    }

    /** Ultimate pressure (Pa): 1.3 c Nc + q Nq + 0.4 gamma B N gamma under a square, and 1 and 0.5 under a strip. */
    static double ultimate(Soil soil, Base base, Factors n, Inclination upright) {
        double ratio = base.ratio();
        return (1 + 0.3 * ratio) * soil.cohesion() * n.cohesion()
                + soil.overburden() * n.overburden()
                + 0.5 * (1 - 0.2 * ratio) * soil.unitWeight() * base.breadth() * n.weight();
    }
}
