package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Citation;

/** Brinch Hansen (1970): N gamma = 1.5 (Nq - 1) tan phi, his shapes and depths. Without friction the corrections add. */
final class Hansen {

    static final Citation RULE = Citation.read(
            "Brinch Hansen", "1970", "factors read on a public reference page; shapes and depths from memory");

    private Hansen() {}

    static Factors factors(double friction) {
        double q = Prandtl.overburden(friction);
        return new Factors(Prandtl.cohesion(friction), q, 1.5 * (q - 1) * StrictMath.tan(friction));
    }

    /** Ultimate pressure (Pa). */
    static double ultimate(Soil soil, Base base, Factors n) {
        if (soil.friction() == 0) {
            return undrained(soil, base, n);
        }
        double overburden = 1 + base.ratio() * StrictMath.sin(soil.friction());
        return Vesic.drained(soil, base, n, overburden);
    }

    static double undrained(Soil soil, Base base, Factors n) {
        double corrected = 1 + 0.2 * base.ratio() + 0.4 * base.embedment();
        return n.cohesion() * soil.cohesion() * corrected + soil.overburden();
    }
}
