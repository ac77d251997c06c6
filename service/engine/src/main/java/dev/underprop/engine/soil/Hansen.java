package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Citation;

/**
 * Brinch Hansen (1970): N gamma = 1.5 (Nq - 1) tan phi, his shapes, depths and inclinations. Without friction the
 * corrections add. Bowles (5th edition, 4-3) lowers the exponents for some bases; the
 * author's own are the lower side.
 */
final class Hansen {

    static final Citation RULE = Citation.read(
            "Brinch Hansen",
            "1970",
            "factors read on a public reference page; shapes, depths and inclinations from memory");

    private Hansen() {}

    static Factors factors(double friction) {
        double q = Prandtl.overburden(friction);
        return new Factors(Prandtl.cohesion(friction), q, 1.5 * (q - 1) * StrictMath.tan(friction));
    }

    /** Without friction 1/2 - 1/2 root(1 - H/(A' c)) is taken off the sum of corrections: ic is what is left over that sum. */
    static Inclination inclination(Soil soil, Base base, Push push, Factors n) {
        if (soil.friction() == 0) {
            double loss = 0.5 - 0.5 * Math.sqrt(1 - push.shear(soil));
            return new Inclination(1 - loss / undrained(base), 1, 1);
        }
        double share = push.share(soil);
        return Inclination.of(StrictMath.pow(1 - 0.5 * share, 5), StrictMath.pow(1 - 0.7 * share, 5), n);
    }

    /** Ultimate pressure (Pa). */
    static double ultimate(Soil soil, Base base, Factors n, Inclination i) {
        if (soil.friction() == 0) {
            return undrained(soil, base, n, i);
        }
        double overburden = 1 + base.ratio() * i.overburden() * StrictMath.sin(soil.friction());
        return Vesic.drained(soil, base, n, i, overburden);
    }

    /** What Hansen and Vesic share without friction (Pa). */
    static double undrained(Soil soil, Base base, Factors n, Inclination i) {
        return n.cohesion() * soil.cohesion() * undrained(base) * i.cohesion() + soil.overburden();
    }

    /** Shape and depth without friction. */
    private static double undrained(Base base) {
        return 1 + 0.2 * base.ratio() + 0.4 * base.embedment();
    }
}
