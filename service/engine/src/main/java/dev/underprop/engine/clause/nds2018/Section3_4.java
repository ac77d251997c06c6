package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Outcome;

/** Section 3.4: bending members, shear. */
public final class Section3_4 {

    private static final Citation STRESS = Citation.remembered("NDS", "2018", "3.4.2");
    private static final Citation NEAR = Citation.remembered("NDS", "2018", "3.4.3.1(a)");
    private static final Citation NOTCH = Citation.remembered("NDS", "2018", "3.4.3.2(a)");
    private static final Citation NOTCH_DEPTH = Citation.remembered("NDS", "2018", "4.4.3 with 3.2.3");

    private Section3_4() {}

    /**
     * Shear stress of a rectangle, fv = 3V/(2·b·d) (Pa), sign of the shear.
     *
     * @param shear V (N)
     * @param area b·d (m²), positive
     */
    public static Cited shearStress(double shear, double area) {
        return new Cited(1.5 * shear / Admissible.positive(area, "b d"), "fv", STRESS);
    }

    /**
     * Share of a concentrated load that counts in the shear at a bearing: x/d nearer than d, 1 further away. Only where
     * load and bearing press on opposite faces of the member over its full breadth; hung loads count in full. A uniform
     * load nearer than d may be left out under the same condition.
     *
     * @param distance x from the bearing's face to the load (m), not negative
     * @param depth d (m), positive
     */
    public static Cited nearBearing(double distance, double depth) {
        double share = Admissible.notNegative(distance, "x") / Admissible.positive(depth, "d");
        return new Cited(Math.min(share, 1), "x/d", NEAR);
    }

    /**
     * Shear V'r (N) that a rectangle carries at a bearing where its tension side is notched:
     * (2/3·F'v·b·dn)·(dn/d)². Refused for a notch deeper than a quarter of the depth.
     *
     * @param shearValue F'v (Pa), positive
     * @param breadth b (m), positive
     * @param depth d (m), positive
     * @param remaining dn, depth left at the notch (m), positive, at most d
     */
    public static Outcome notchedShear(double shearValue, double breadth, double depth, double remaining) {
        Admissible.positive(shearValue, "F'v");
        Admissible.positive(breadth, "b");
        Admissible.positive(depth, "d");
        Admissible.positive(remaining, "dn");
        if (!Units.atMost(remaining, depth)) {
            throw new IllegalArgumentException("dn must not exceed d");
        }
        if (!Units.atLeast(remaining, 0.75 * depth)) {
            return new Outcome.Refused("an end notch is deeper than a quarter of the member", NOTCH_DEPTH);
        }
        double left = remaining / depth;
        return Outcome.of(2.0 / 3.0 * shearValue * breadth * remaining * left * left, "V'r", NOTCH);
    }
}
