package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 3.3: bending members, flexure and beam stability. */
public final class Section3_3 {

    /** Clause 3.3.3.7: a slenderness ratio above this is not allowed. */
    public static final double SLENDERNESS_LIMIT = 50;

    private static final Citation TABLE_3_3_3 = Citation.read("NDS", "2018", "Table 3.3.3, footnote 1");
    private static final Citation RATIO = Citation.read("NDS", "2018", "3.3.3.6, Eq. 3.3-5");
    private static final Citation FACTOR = Citation.read("NDS", "2018", "3.3.3.8, Eq. 3.3-6");
    private static final Citation BENDING = Citation.read("NDS", "2018", "3.3.2");

    private Section3_3() {}

    /** Bending stress fb = M/S (Pa). @param moment (N·m) @param modulus section modulus (m³) */
    public static Cited bendingStress(double moment, double modulus) {
        return new Cited(moment / modulus, "fb", BENDING);
    }

    /**
     * Effective length le (m) for a load that the table does not list, the footnote's values.
     *
     * @param unbraced laterally unsupported length (m)
     * @param depth (m)
     */
    public static Cited effectiveLength(double unbraced, double depth) {
        double ratio = unbraced / depth;
        double le = ratio < 7 ? 2.06 * unbraced : ratio <= 14.3 ? 1.63 * unbraced + 3 * depth : 1.84 * unbraced;
        return new Cited(le, "le", TABLE_3_3_3);
    }

    /** Effective length le (m) of a single span loaded at its centre, unsupported between its ends. */
    public static Cited effectiveLengthCentreLoad(double unbraced, double depth) {
        double le = unbraced / depth < 7 ? 1.80 * unbraced : 1.37 * unbraced + 3 * depth;
        return new Cited(le, "le", Citation.read("NDS", "2018", "Table 3.3.3"));
    }

    /** Slenderness ratio RB = √(le·d/b²). Above {@link #SLENDERNESS_LIMIT} the member is refused, not clamped. */
    public static Cited slenderness(double effectiveLength, double breadth, double depth) {
        return new Cited(Math.sqrt(effectiveLength * depth / (breadth * breadth)), "RB", RATIO);
    }

    /** Critical buckling value FbE = 1.20·E'min/RB² (Pa). */
    public static Cited criticalStress(double modulusMin, double slenderness) {
        return new Cited(1.20 * modulusMin / (slenderness * slenderness), "FbE", FACTOR);
    }

    /**
     * Beam stability factor CL.
     *
     * @param critical FbE (Pa)
     * @param bending Fb*, all factors but CL, Cfu and CV (Pa)
     */
    public static Cited stability(double critical, double bending) {
        double f = critical / bending;
        double half = (1 + f) / 1.9;
        return new Cited(half - Math.sqrt(half * half - f / 0.95), "CL", FACTOR);
    }
}
