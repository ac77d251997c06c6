package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Citation;

/** Meyerhof (1963): factors, shapes, depths and inclinations. Below 10 degrees of friction only those of cohesion are counted. */
final class Meyerhof {

    static final Citation RULE = Citation.read(
            "Meyerhof",
            "1963",
            "factors read on a public reference page, shapes and depths reproduced from worked examples, inclinations"
                    + " from memory");

    /** The friction from which on the factors of overburden and weight rise, 10 degrees (rad). */
    private static final double LEAST = StrictMath.PI / 18 - 1e-12;

    private Meyerhof() {}

    static Factors factors(double friction) {
        double q = Prandtl.overburden(friction);
        return new Factors(Prandtl.cohesion(friction), q, (q - 1) * StrictMath.tan(1.4 * friction));
    }

    /** By the angle of the load off the upright; where it reaches that of friction nothing is left of the weight's part. */
    static Inclination inclination(Soil soil, Base base, Push push, Factors n) {
        double angle = StrictMath.atan(push.tilt());
        double upright = 1 - angle / (StrictMath.PI / 2);
        double left = angle < soil.friction() ? 1 - angle / soil.friction() : angle > 0 ? 0 : 1;
        return new Inclination(upright * upright, upright * upright, left * left);
    }

    /** Ultimate pressure (Pa). */
    static double ultimate(Soil soil, Base base, Factors n, Inclination i) {
        double kp = Prandtl.passive(soil.friction());
        double deep = base.depth() / base.width() * Math.sqrt(kp);
        boolean frictional = soil.friction() >= LEAST;
        double other = frictional ? (1 + 0.1 * kp * base.ratio()) * (1 + 0.1 * deep) : 1;
        return soil.cohesion() * n.cohesion() * (1 + 0.2 * kp * base.ratio()) * (1 + 0.2 * deep) * i.cohesion()
                + soil.overburden() * n.overburden() * other * i.overburden()
                + 0.5 * soil.unitWeight() * base.breadth() * n.weight() * other * i.weight();
    }
}
