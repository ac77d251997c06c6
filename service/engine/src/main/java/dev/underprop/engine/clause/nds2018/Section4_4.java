package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;

/** Section 4.4: special design considerations of sawn lumber, lateral stability by depth and breadth. */
public final class Section4_4 {

    private static final Citation RULES = Citation.remembered("NDS", "2018", "4.4.1.2");

    private Section4_4() {}

    /** Lateral support, each kind including those before it. */
    public enum LateralSupport {
        /** None. */
        NONE("no lateral support"),
        /** Ends held against rotation and sideways movement. */
        ENDS("ends held against rotation"),
        /** Compression edge held along its whole length besides. */
        COMPRESSION_EDGE("the compression edge held along its whole length, and the ends"),
        /** Bridging or full-depth blocking at most 8 ft apart besides. */
        BRIDGING("bridging or blocking at most 8 ft apart, the compression edge held, and the ends"),
        /** Both edges held along their whole length, and the ends. */
        BOTH_EDGES("both edges held along their whole length, and the ends");

        private final String words;

        LateralSupport(String words) {
            this.words = words;
        }
    }

    /**
     * CL = 1 by the approximate rules of 4.4.1.2, which go by nominal depth and breadth; refused where the support is less
     * than the rule wants, and for a ratio above 7, for which there is no rule.
     *
     * @param nominalBreadth (m), positive; of one ply where plies are not fastened to act together
     * @param nominalDepth (m), positive
     * @param support what holds the member
     */
    public static Outcome stabilityByRule(double nominalBreadth, double nominalDepth, LateralSupport support) {
        double ratio = Admissible.positive(nominalDepth, "depth") / Admissible.positive(nominalBreadth, "breadth");
        if (!Units.atMost(ratio, 7)) {
            return new Outcome.Refused("no rule covers a depth above 7 times the breadth", RULES);
        }
        LateralSupport required = required(ratio);
        return support.compareTo(required) >= 0
                ? Outcome.of(1, "CL", RULES)
                : new Outcome.Refused(
                        "depth to breadth needs " + required.words + "; there is " + support.words, RULES);
    }

    private static LateralSupport required(double ratio) {
        if (Units.atMost(ratio, 2)) {
            return LateralSupport.NONE;
        }
        if (Units.atMost(ratio, 4)) {
            return LateralSupport.ENDS;
        }
        if (Units.atMost(ratio, 5)) {
            return LateralSupport.COMPRESSION_EDGE;
        }
        return Units.atMost(ratio, 6) ? LateralSupport.BRIDGING : LateralSupport.BOTH_EDGES;
    }
}
