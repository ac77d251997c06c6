package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;
import java.util.Locale;

/** Section 12.1: how far a lag screw must reach into the wood to count sideways. */
public final class Section12_1 {

    private static final Citation LEAST = Citation.remembered("NDS", "2018", "12.1.4.6");

    private static final double DIAMETERS = 4;

    private Section12_1() {}

    /**
     * Penetration that counts as length in the wood (m), the tapered tip left out.
     *
     * @param diameter nominal (m), positive
     * @param penetration without the tip (m), positive
     * @return refused below four diameters
     */
    public static Outcome penetration(double diameter, double penetration) {
        double reach = Admissible.positive(penetration, "penetration") / Admissible.positive(diameter, "diameter");
        return Units.atLeast(reach, DIAMETERS)
                ? Outcome.of(penetration, "p", LEAST)
                : new Outcome.Refused(
                        String.format(
                                Locale.ROOT, "lag screws reach %.1f of their diameters into the wood, not 4", reach),
                        LEAST);
    }
}
