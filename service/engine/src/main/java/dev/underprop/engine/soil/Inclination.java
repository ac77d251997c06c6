package dev.underprop.engine.soil;

/**
 * Factors by which a sideways push takes from what a base bears.
 *
 * @param cohesion ic
 * @param overburden iq
 * @param weight i gamma
 */
public record Inclination(double cohesion, double overburden, double weight) {

    /** Of an upright load. */
    public static final Inclination NONE = new Inclination(1, 1, 1);

    /** By powers of what is left of 1, with ic = iq - (1 - iq)/(Nq - 1), as Hansen, Vesic and annex D have it with friction. */
    static Inclination of(double overburden, double weight, Factors n) {
        double cohesion = overburden - (1 - overburden) / (n.overburden() - 1);
        return new Inclination(Math.max(0, cohesion), overburden, weight);
    }

    /** Exponent m of Vesic and annex D for a push across the shorter side, (2 + B'/L')/(1 + B'/L'). */
    static double exponent(Base base) {
        return (2 + base.ratio()) / (1 + base.ratio());
    }
}
