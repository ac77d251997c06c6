package dev.underprop.engine.soil;

/** The two factors that Meyerhof, Hansen and Vesic share: Prandtl (1921) and Reissner (1924). */
final class Prandtl {

    private Prandtl() {}

    /** Nq = exp(pi tan phi) tan²(45° + phi/2). */
    static double overburden(double friction) {
        return StrictMath.exp(StrictMath.PI * StrictMath.tan(friction)) * passive(friction);
    }

    /** Nc = (Nq - 1) cot phi; pi + 2 without friction. */
    static double cohesion(double friction) {
        return friction > 0 ? (overburden(friction) - 1) / StrictMath.tan(friction) : StrictMath.PI + 2;
    }

    /** Kp = tan²(45° + phi/2). */
    static double passive(double friction) {
        double t = StrictMath.tan(StrictMath.PI / 4 + friction / 2);
        return t * t;
    }
}
