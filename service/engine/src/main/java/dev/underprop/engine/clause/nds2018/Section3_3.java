package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Outcome;
import java.util.Locale;

/** Section 3.3: bending members, flexure and beam stability. */
public final class Section3_3 {

    /** Clause 3.3.3.7: the greatest slenderness ratio RB of a bending member. */
    public static final double SLENDERNESS_LIMIT = 50;

    private static final Citation FLEXURE = Citation.remembered("NDS", "2018", "3.3.2");
    private static final Citation SQUARE = Citation.remembered("NDS", "2018", "3.3.3.1");
    private static final Citation HELD = Citation.remembered("NDS", "2018", "3.3.3.3");
    private static final Citation AT_BEARINGS = Citation.remembered("NDS", "2018", "3.3.3.1 and 3.3.3.4");
    private static final Citation NOT_HELD = Citation.remembered("NDS", "2018", "3.3.3");
    private static final Citation LENGTHS_READ = Citation.read("NDS", "2018", "Table 3.3.3");
    private static final Citation LENGTHS = Citation.remembered("NDS", "2018", "Table 3.3.3");
    private static final Citation RATIO = Citation.read("NDS", "2018", "3.3.3.6");
    private static final Citation LIMIT = Citation.read("NDS", "2018", "3.3.3.7");
    private static final Citation FACTOR = Citation.read("NDS", "2018", "3.3.3.8");

    private Section3_3() {}

    /**
     * Bending stress fb = M/S (Pa), sign of the moment.
     *
     * @param moment (N·m)
     * @param sectionModulus S (m³), positive
     */
    public static Cited bendingStress(double moment, double sectionModulus) {
        return new Cited(moment / Admissible.positive(sectionModulus, "S"), "fb", FLEXURE);
    }

    /**
     * CL = 1 without computing it: no deeper than broad (3.3.3.1), or compression edge held along its whole length and
     * ends held against rotation (3.3.3.3). Refused otherwise: then CL is to be computed.
     *
     * @param breadth b (m), positive
     * @param depth d (m), positive
     */
    public static Outcome stabilityWhenHeld(
            double breadth, double depth, boolean compressionEdgeHeld, boolean endsHeld) {
        Admissible.positive(breadth, "b");
        Admissible.positive(depth, "d");
        if (Units.atMost(depth, breadth)) {
            return Outcome.of(1, "CL", SQUARE);
        }
        if (compressionEdgeHeld && endsHeld) {
            return Outcome.of(1, "CL", HELD);
        }
        return new Outcome.Refused("the compression edge or the ends are not held sideways", NOT_HELD);
    }

    /**
     * Whether a member stays upright where it bears: one no deeper than broad needs nothing (3.3.3.1), one deeper than
     * broad is to be held there against turning (3.3.3.4). 1 where that is so, refused otherwise.
     *
     * @param breadth b (m), positive; of one ply where plies are not fastened to act together
     * @param depth d (m), positive
     * @param held whether it is held against turning where it bears
     */
    public static Outcome uprightAtBearings(double breadth, double depth, boolean held) {
        double ratio = Admissible.positive(depth, "d") / Admissible.positive(breadth, "b");
        return held || Units.atMost(ratio, 1)
                ? Outcome.of(1, "held", AT_BEARINGS)
                : new Outcome.Refused(
                        String.format(
                                Locale.ROOT,
                                "a beam %.2f times as deep as broad is to be held against turning where it bears",
                                ratio),
                        AT_BEARINGS);
    }

    /**
     * Effective length le (m), Table 3.3.3.
     *
     * @param loading row of the table
     * @param unbraced laterally unsupported length lu (m), positive
     * @param depth d (m), positive
     */
    public static Cited effectiveLength(BeamLoading loading, double unbraced, double depth) {
        Admissible.positive(unbraced, "lu");
        Admissible.positive(depth, "d");
        return new Cited(loading.effectiveLength(unbraced, depth), "le", lengthCitation(loading));
    }

    /** Only these rows were compared with a copy of the table. */
    private static Citation lengthCitation(BeamLoading loading) {
        return switch (loading) {
            case UNIFORM, CENTRE_LOAD, NOT_LISTED -> LENGTHS_READ;
            default -> LENGTHS;
        };
    }

    /**
     * Slenderness ratio RB = √(le·d/b²), refused above {@link #SLENDERNESS_LIMIT}.
     *
     * @param effectiveLength le (m), positive
     * @param breadth b (m), positive; of one ply where plies are not fastened to act together
     * @param depth d (m), positive
     */
    public static Outcome slenderness(double effectiveLength, double breadth, double depth) {
        Admissible.positive(effectiveLength, "le");
        Admissible.positive(breadth, "b");
        Admissible.positive(depth, "d");
        double ratio = Math.sqrt(effectiveLength * depth / (breadth * breadth));
        if (!Units.atMost(ratio, SLENDERNESS_LIMIT)) {
            return new Outcome.Refused(
                    String.format(Locale.ROOT, "slenderness ratio RB = %.1f is above 50", ratio), LIMIT);
        }
        return Outcome.of(ratio, "RB", RATIO);
    }

    /**
     * Critical buckling value FbE = 1.20·E'min/RB² (Pa).
     *
     * @param modulusMin E'min (Pa), positive
     * @param slenderness RB, positive
     */
    public static Cited criticalStress(double modulusMin, double slenderness) {
        Admissible.positive(modulusMin, "E'min");
        Admissible.positive(slenderness, "RB");
        return new Cited(1.20 * modulusMin / (slenderness * slenderness), "FbE", FACTOR);
    }

    /**
     * Beam stability factor CL, at most 1.
     *
     * @param critical FbE (Pa), positive
     * @param bendingStar Fb*, all factors but CL and Cfu (Pa), positive
     */
    public static Cited stability(double critical, double bendingStar) {
        double f = Admissible.positive(critical, "FbE") / Admissible.positive(bendingStar, "Fb*");
        double half = (1 + f) / 1.9;
        // The other root of the same equation, so that a stocky beam (large f) does not lose digits in a difference.
        return new Cited(f / 0.95 / (half + Math.sqrt(half * half - f / 0.95)), "CL", FACTOR);
    }

    /**
     * CL from the size of the beam: RB, FbE and CL in one, refused where RB is.
     *
     * @param effectiveLength le (m), positive
     * @param breadth b (m), positive
     * @param depth d (m), positive
     * @param modulusMin E'min (Pa), positive
     * @param bendingStar Fb* (Pa), positive
     */
    public static Outcome stability(
            double effectiveLength, double breadth, double depth, double modulusMin, double bendingStar) {
        Outcome slenderness = slenderness(effectiveLength, breadth, depth);
        if (slenderness instanceof Outcome.Value value) {
            double critical = criticalStress(modulusMin, value.cited().value()).value();
            return new Outcome.Value(stability(critical, bendingStar));
        }
        return slenderness;
    }
}
