package dev.underprop.engine.clause.aci318_19;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Outcome;
import java.util.Locale;

/** Section 19.2: strength, modulus and weight of concrete. */
public final class Section19_2 {

    /** One pound-force per cubic foot (N/m³). */
    private static final double PCF = 4.4482216152605 / (0.3048 * 0.3048 * 0.3048);

    private static final double LEAST = 2500;

    /** Least factor for lightweight concrete. */
    public static final double LEAST_LAMBDA = 0.75;

    /** Root of f'c is at most 100 psi in shear (22.5.3.1); refused beyond, not held there. */
    private static final double MOST = 10_000;

    private static final Citation STRENGTH = Citation.remembered("ACI", "318-19", "Table 19.2.1.1 and 22.5.3.1");
    private static final Citation MODULUS = Citation.remembered("ACI", "318-19", "19.2.2.1(b)");
    private static final Citation LIGHTWEIGHT = Citation.remembered("ACI", "318-19", "Table 19.2.4.1(a)");

    private Section19_2() {}

    /**
     * A specified strength (Pa) within which the rules hold: 2500 to 10000 psi.
     *
     * @param strength f'c (Pa), positive
     */
    public static Outcome strength(double strength) {
        double psi = Admissible.positive(strength, "f'c") / Psi.PSI;
        if (psi < LEAST * (1 - 1e-9)) {
            return new Outcome.Refused(
                    text("concrete of %.0f psi is below the least strength of 2500 psi", psi), STRENGTH);
        }
        return psi > MOST * (1 + 1e-9)
                ? new Outcome.Refused(text("concrete of %.0f psi is beyond the 10000 psi of the rule", psi), STRENGTH)
                : Outcome.of(strength, "f'c", STRENGTH);
    }

    private static String text(String form, double psi) {
        return String.format(Locale.ROOT, form, psi);
    }

    /** Modulus of normal-weight concrete, 57000 root f'c (Pa). */
    public static Cited modulus(double strength) {
        return new Cited(57_000 * Psi.root(Admissible.positive(strength, "f'c")), "Ec", MODULUS);
    }

    /**
     * Factor for lightweight concrete.
     *
     * @param unitWeight of the concrete (N/m³), positive
     */
    public static Cited lightweight(double unitWeight) {
        double pcf = Admissible.positive(unitWeight, "unit weight") / PCF;
        double factor = pcf <= 100 ? LEAST_LAMBDA : pcf <= 135 ? Math.min(0.0075 * pcf, 1) : 1;
        return new Cited(factor, "lambda", LIGHTWEIGHT);
    }
}
