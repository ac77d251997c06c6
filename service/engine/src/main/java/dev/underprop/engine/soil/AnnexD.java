package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Citation;

/** EN 1997-1:2004 annex D, characteristic values, a level base. Depth counts as overburden alone. */
final class AnnexD {

    static final Citation RULE = Citation.remembered("EN 1997-1", "2004", "annex D.3 and D.4");

    private AnnexD() {}

    static Factors factors(double friction) {
        double q = Prandtl.overburden(friction);
        return new Factors(Prandtl.cohesion(friction), q, 2 * (q - 1) * StrictMath.tan(friction));
    }

    static Inclination inclination(Soil soil, Base base, Push push, Factors n) {
        if (soil.friction() == 0) {
            return new Inclination(0.5 * (1 + Math.sqrt(1 - push.shear(soil))), 1, 1);
        }
        return Vesic.inclination(soil, base, push, n);
    }

    /** Ultimate pressure (Pa). */
    static double ultimate(Soil soil, Base base, Factors n, Inclination i) {
        double ratio = base.ratio();
        if (soil.friction() == 0) {
            return n.cohesion() * soil.cohesion() * (1 + 0.2 * ratio) * i.cohesion() + soil.overburden();
        }
        double q = 1 + ratio * StrictMath.sin(soil.friction());
        double c = (q * n.overburden() - 1) / (n.overburden() - 1);
        return soil.cohesion() * n.cohesion() * c * i.cohesion()
                + soil.overburden() * n.overburden() * q * i.overburden()
                + 0.5 * soil.unitWeight() * base.breadth() * n.weight() * (1 - 0.3 * ratio) * i.weight();
    }
}
