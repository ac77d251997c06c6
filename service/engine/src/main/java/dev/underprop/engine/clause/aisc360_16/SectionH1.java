package dev.underprop.engine.clause.aisc360_16;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section H1.1: axial force with bending about one axis. */
public final class SectionH1 {

    private static final Citation INTERACTION =
            Citation.remembered("AISC", "360-16", "H1.1, Equations H1-1a and H1-1b");

    /** Axial share from which the first of the two equations holds. */
    public static final double MUCH = 0.2;

    private SectionH1() {}

    /**
     * Share of the strength that is used, at most 1 where it suffices.
     *
     * @param axial required over available axial strength, not negative
     * @param bending required over available flexural strength, not negative
     */
    public static Cited interaction(double axial, double bending) {
        Admissible.notNegative(axial, "Pr/Pc");
        Admissible.notNegative(bending, "Mr/Mc");
        double used = axial >= MUCH ? axial + 8.0 / 9 * bending : axial / 2 + bending;
        return new Cited(used, "Pr/Pc with Mr/Mc", INTERACTION);
    }
}
