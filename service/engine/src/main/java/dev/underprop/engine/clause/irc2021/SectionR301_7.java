package dev.underprop.engine.clause.irc2021;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/**
 * Section R301.7: deflection of structural members under live load. The limit under dead and live load together is not in
 * this section; see {@link dev.underprop.engine.clause.ibc2021.Section1604}.
 */
public final class SectionR301_7 {

    private static final Citation TABLE = Citation.remembered("IRC", "2021", "Table R301.7");
    private static final Citation CANTILEVER = Citation.remembered("IRC", "2021", "Table R301.7, cantilever footnote");

    private SectionR301_7() {}

    /** Span divided by this is the live load deflection allowed to floors. */
    public static Cited floors() {
        return new Cited(360, "L/", TABLE);
    }

    /** Span divided by this is the live load deflection allowed to all other structural members. */
    public static Cited otherMembers() {
        return new Cited(240, "L/", TABLE);
    }

    /** Length L to judge a cantilever by: twice its projection. @param projection (m), positive */
    public static Cited cantileverLength(double projection) {
        return new Cited(2 * Admissible.positive(projection, "projection"), "L", CANTILEVER);
    }

    /**
     * Deflection allowed, L divided by the limit (m).
     *
     * @param length L: the span, or {@link #cantileverLength} (m), positive
     * @param limit what a rule divides the span by
     */
    public static Cited allowed(double length, Cited limit) {
        return new Cited(Admissible.positive(length, "L") / limit.value(), "Δ allowed", limit.citation());
    }
}
