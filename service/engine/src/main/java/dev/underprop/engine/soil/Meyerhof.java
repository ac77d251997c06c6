package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Citation;

/** Meyerhof (1963): factors, shapes and depths. Below 10 degrees of friction only those of cohesion are counted. */
final class Meyerhof {

    static final Citation RULE = Citation.read(
            "Meyerhof",
            "1963",
            "factors read on a public reference page, shapes and depths reproduced from worked examples");

    /** The friction from which on the factors of overburden and weight rise, 10 degrees (rad). */
    private static final double LEAST = StrictMath.PI / 18 - 1e-12;

    private Meyerhof() {}

    static Factors factors(double friction) {
        double q = Prandtl.overburden(friction);
        return new Factors(Prandtl.cohesion(friction), q, (q - 1) * StrictMath.tan(1.4 * friction));
    }

    /** Ultimate pressure (Pa). */
    static double ultimate(Soil soil, Base base, Factors n) {
        double kp = Prandtl.passive(soil.friction());
        double deep = base.depth() / base.width() * Math.sqrt(kp);
        boolean frictional = soil.friction() >= LEAST;
        double other = frictional ? (1 + 0.1 * kp * base.ratio()) * (1 + 0.1 * deep) : 1;
        return soil.cohesion() * n.cohesion() * (1 + 0.2 * kp * base.ratio()) * (1 + 0.2 * deep)
                + soil.overburden() * n.overburden() * other
                + 0.5 * soil.unitWeight() * base.breadth() * n.weight() * other;
    }
}
