package dev.underprop.engine.clause.nds2018;

/**
 * The rows of NDS 2018 Table 3.3.3, effective length le of bending members. "Braced there" means held sideways at each
 * load; the unbraced length lu is then the distance between loads.
 */
public enum BeamLoading {
    /** Cantilever, uniform load. */
    CANTILEVER_UNIFORM(1.33, 0.90),
    /** Cantilever, load at the free end. */
    CANTILEVER_END_LOAD(1.87, 1.44),
    /** Single span, uniform load. */
    UNIFORM(2.06, 1.63),
    /** Single span, load at the centre, not held there. */
    CENTRE_LOAD(1.80, 1.37),
    /** Single span, load at the centre, braced there. */
    CENTRE_LOAD_BRACED(1.11),
    /** Two equal loads at the third points, braced there. */
    TWO_LOADS_BRACED(1.68),
    /** Three equal loads at the quarter points, braced there. */
    THREE_LOADS_BRACED(1.54),
    /** Four equal loads at the fifth points, braced there. */
    FOUR_LOADS_BRACED(1.68),
    /** Five equal loads at the sixth points, braced there. */
    FIVE_LOADS_BRACED(1.73),
    /** Six equal loads at the seventh points, braced there. */
    SIX_LOADS_BRACED(1.78),
    /** Seven or more equal loads, evenly spaced, braced there. */
    SEVEN_OR_MORE_LOADS_BRACED(1.84),
    /** Equal moments at both ends. */
    END_MOMENTS(1.84),
    /** Anything else: the values of footnote 1. */
    NOT_LISTED(2.06, 1.63) {
        @Override
        double effectiveLength(double unbraced, double depth) {
            return unbraced / depth > FOOTNOTE_SLENDER ? 1.84 * unbraced : super.effectiveLength(unbraced, depth);
        }
    };

    /** lu/d from which the second column of the table holds. */
    private static final double SECOND_COLUMN = 7;

    /** lu/d above which footnote 1 has a third value. */
    private static final double FOOTNOTE_SLENDER = 14.3;

    private final double stocky;
    private final double slender;
    private final double depths;

    BeamLoading(double stocky, double slender) {
        this.stocky = stocky;
        this.slender = slender;
        this.depths = 3;
    }

    BeamLoading(double single) {
        this.stocky = single;
        this.slender = single;
        this.depths = 0;
    }

    double effectiveLength(double unbraced, double depth) {
        return unbraced / depth < SECOND_COLUMN ? stocky * unbraced : slender * unbraced + depths * depth;
    }

    /** The effective length as a formula in lu and d, that of the column or footnote which holds for these. */
    public String formula(double unbraced, double depth) {
        if (unbraced / depth < SECOND_COLUMN) {
            return stocky + " × lu";
        }
        if (this == NOT_LISTED && unbraced / depth > FOOTNOTE_SLENDER) {
            return "1.84 × lu";
        }
        return depths == 0 ? slender + " × lu" : slender + " × lu + " + (int) depths + " × d";
    }
}
