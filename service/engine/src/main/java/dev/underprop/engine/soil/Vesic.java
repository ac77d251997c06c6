package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Citation;

/** Vesic (1973): N gamma = 2 (Nq + 1) tan phi, his shapes and inclinations; depths as Hansen has them. */
final class Vesic {

    static final Citation RULE = Citation.read(
            "FHWA-SA-02-054, Shallow Foundations",
            "2002",
            "Table 5-1, factors by Vesic; shapes and depths from worked examples, inclinations from memory");

    private Vesic() {}

    static Factors factors(double friction) {
        double q = Prandtl.overburden(friction);
        return new Factors(Prandtl.cohesion(friction), q, 2 * (q + 1) * StrictMath.tan(friction));
    }

    static Inclination inclination(Soil soil, Base base, Push push, Factors n) {
        double m = Inclination.exponent(base);
        if (soil.friction() == 0) {
            return new Inclination(Math.max(0, 1 - m * push.shear(soil) / n.cohesion()), 1, 1);
        }
        double left = 1 - push.share(soil);
        return Inclination.of(StrictMath.pow(left, m), StrictMath.pow(left, m + 1), n);
    }

    /** Ultimate pressure (Pa). */
    static double ultimate(Soil soil, Base base, Factors n, Inclination i) {
        return soil.friction() == 0
                ? Hansen.undrained(soil, base, n, i)
                : drained(soil, base, n, i, 1 + base.ratio() * StrictMath.tan(soil.friction()));
    }

    /** What Hansen and Vesic share. @param shape of the overburden */
    static double drained(Soil soil, Base base, Factors n, Inclination i, double shape) {
        double k = base.embedment();
        double free = 1 - StrictMath.sin(soil.friction());
        double cohesion = (1 + n.overburden() / n.cohesion() * base.ratio()) * (1 + 0.4 * k);
        double overburden = shape * (1 + 2 * StrictMath.tan(soil.friction()) * free * free * k);
        return soil.cohesion() * n.cohesion() * cohesion * i.cohesion()
                + soil.overburden() * n.overburden() * overburden * i.overburden()
                + 0.5 * soil.unitWeight() * base.breadth() * n.weight() * (1 - 0.4 * base.ratio()) * i.weight();
    }
}
