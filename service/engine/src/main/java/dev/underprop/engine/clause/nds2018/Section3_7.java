package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Outcome;
import java.util.Locale;

/** Section 3.7: solid columns of sawn lumber, pinned at both ends, so that le is the height. */
public final class Section3_7 {

    /** Clause 3.7.1.4: the greatest slenderness le/d of a column. */
    public static final double SLENDERNESS_LIMIT = 50;

    /** The same during construction. */
    public static final double SLENDERNESS_LIMIT_DURING_CONSTRUCTION = 75;

    private static final Citation RATIO = Citation.remembered("NDS", "2018", "3.7.1.3");
    private static final Citation LIMIT = Citation.read("NDS", "2018", "3.7.1.4");
    private static final Citation FACTOR = Citation.remembered("NDS", "2018", "3.7.1.5, Equation 3.7-1");

    /** c of sawn lumber. */
    private static final double SAWN = 0.8;

    private Section3_7() {}

    /**
     * Slenderness le/d, refused above 50, during construction above 75.
     *
     * @param effectiveLength le (m), positive
     * @param size d in the plane of buckling (m), positive
     * @param construction whether the column stands during construction only
     */
    public static Outcome slenderness(double effectiveLength, double size, boolean construction) {
        double ratio = Admissible.positive(effectiveLength, "le") / Admissible.positive(size, "d");
        double limit = construction ? SLENDERNESS_LIMIT_DURING_CONSTRUCTION : SLENDERNESS_LIMIT;
        return Units.atMost(ratio, limit)
                ? Outcome.of(ratio, "le/d", RATIO)
                : new Outcome.Refused(
                        String.format(Locale.ROOT, "column slenderness le/d = %.1f is above %.0f", ratio, limit),
                        LIMIT);
    }

    /**
     * Critical buckling value FcE = 0.822 E'min/(le/d)² (Pa).
     *
     * @param modulusMin E'min (Pa), positive
     * @param slenderness le/d, positive
     */
    public static Cited criticalStress(double modulusMin, double slenderness) {
        double root = Admissible.positive(slenderness, "le/d");
        return new Cited(0.822 * Admissible.positive(modulusMin, "E'min") / (root * root), "FcE", FACTOR);
    }

    /**
     * Column stability factor CP with c = 0.8, at most 1.
     *
     * @param critical FcE (Pa), positive
     * @param compressionStar Fc*, all factors but CP (Pa), positive
     */
    public static Cited stability(double critical, double compressionStar) {
        double f = Admissible.positive(critical, "FcE") / Admissible.positive(compressionStar, "Fc*");
        double half = (1 + f) / (2 * SAWN);
        // The other root of the same equation, so that a stocky column loses no digits in a difference.
        return new Cited(f / SAWN / (half + Math.sqrt(half * half - f / SAWN)), "CP", FACTOR);
    }
}
