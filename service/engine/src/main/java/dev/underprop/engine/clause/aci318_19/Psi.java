package dev.underprop.engine.clause.aci318_19;

/** Square roots of a strength, which the document takes in psi and counts as psi. */
public final class Psi {

    /** One pound-force per square inch (Pa). */
    public static final double PSI = 4.4482216152605 / (0.0254 * 0.0254);

    private Psi() {}

    /** Root of a strength (Pa), as a stress (Pa). */
    public static double root(double strength) {
        return Math.sqrt(strength / PSI) * PSI;
    }
}
