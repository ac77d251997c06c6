package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** How much ground beside a base takes part when it gives way: what is cut away there no longer holds. */
public final class Wedge {

    private static final Citation RULE = Citation.remembered(
            "Prandtl and Reissner",
            "1921 and 1924",
            "the wedge that is pushed up, B tan(45° + phi/2) exp(pi/2 tan phi)");

    private Wedge() {}

    /**
     * How far it reaches from the edge of the base (m).
     *
     * @param friction angle (rad), not negative
     * @param breadth B (m), positive
     */
    public static Cited reach(double friction, double breadth) {
        double reach = breadth
                * StrictMath.tan(StrictMath.PI / 4 + friction / 2)
                * StrictMath.exp(StrictMath.PI / 2 * StrictMath.tan(friction));
        return new Cited(reach, "x", RULE);
    }
}
