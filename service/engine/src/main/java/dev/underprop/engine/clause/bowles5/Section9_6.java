package dev.underprop.engine.clause.bowles5;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 9-6: the modulus of subgrade reaction from an allowable pressure. */
public final class Section9_6 {

    /** Settlement taken to go with the ultimate pressure: 1/40 m, which is 25 mm. */
    private static final double PER_METRE = 40;

    private static final Citation MODULUS = Citation.read(
            "Bowles, Foundation Analysis and Design", "5th edition", "section 9-6 (read in a public copy)");

    private Section9_6() {}

    /**
     * Modulus of subgrade reaction (N/m³): ks = 40 SF qa.
     *
     * @param allowable pressure (Pa), positive
     * @param safety factor of safety that is in it, positive
     */
    public static Cited modulus(double allowable, double safety) {
        Admissible.positive(allowable, "allowable pressure");
        Admissible.positive(safety, "factor of safety");
        return new Cited(PER_METRE * safety * allowable, "ks", MODULUS);
    }
}
