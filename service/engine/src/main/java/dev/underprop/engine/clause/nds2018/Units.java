package dev.underprop.engine.clause.nds2018;

/** Exact factors for the constants that the document gives in inches and psi. */
final class Units {

    /** One inch (m). */
    static final double INCH = 0.0254;

    /** One pound-force per square inch (Pa). */
    static final double PSI = 4.4482216152605 / (INCH * INCH);

    private Units() {}
}
