package dev.underprop.engine.clause.nds2018;

/** Exact factors for the constants that the document gives in inches and psi, and comparison at a printed limit. */
final class Units {

    /** One inch (m). */
    static final double INCH = 0.0254;

    /** One foot (m). */
    static final double FOOT = 12 * INCH;

    /** One pound-force (N), with standard gravity. */
    static final double POUND = 4.4482216152605;

    /** One pound-force per square inch (Pa). */
    static final double PSI = POUND / (INCH * INCH);

    /** One pound-force per cubic foot (N/m³). */
    static final double PCF = POUND / (FOOT * FOOT * FOOT);

    /**
     * Part of a limit within which a figure counts as lying on it. Conversion from inches and products of a few factors
     * leave about 1e-15; no rule is eased by anything that could be measured.
     */
    private static final double ROUNDING = 1e-12;

    private Units() {}

    /** Whether a is at most the limit, a figure on the limit counting as within. */
    static boolean atMost(double a, double limit) {
        return a <= limit * (1 + ROUNDING);
    }

    /** Whether a is at least the limit, a figure on the limit counting as within. */
    static boolean atLeast(double a, double limit) {
        return a >= limit * (1 - ROUNDING);
    }
}
