package dev.underprop.engine.clause.aci318_19;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;
import java.util.Locale;

/** Section 14.3 with 14.5.1.7: least thickness of a plain concrete footing, and what of it counts. */
public final class Section14_3 {

    private static final double INCH = 0.0254;
    private static final double LEAST = 8 * INCH;
    private static final double LOST = 2 * INCH;

    private static final Citation THICKNESS = Citation.remembered("ACI", "318-19", "14.3.2.1");
    private static final Citation COUNTED = Citation.remembered("ACI", "318-19", "14.5.1.7");

    private Section14_3() {}

    /**
     * Thickness of a footing that counts (m): 2 in less than it has, since it is cast on soil.
     *
     * @param thickness h (m), positive
     * @return refused below 8 in
     */
    public static Outcome footing(double thickness) {
        return Admissible.positive(thickness, "h") < LEAST * (1 - 1e-9)
                ? new Outcome.Refused(
                        text("a plain concrete pad of %.1f in is thinner than 8 in", thickness), THICKNESS)
                : onSoil(thickness);
    }

    /**
     * Thickness that counts (m) of plain concrete cast on soil that is no footing.
     *
     * @param thickness h (m), positive
     * @return refused where nothing is left
     */
    public static Outcome onSoil(double thickness) {
        double left = Admissible.positive(thickness, "h") - LOST;
        return left > 1e-9
                ? Outcome.of(left, "h", COUNTED)
                : new Outcome.Refused(text("of %.1f in cast on soil nothing counts", thickness), COUNTED);
    }

    private static String text(String form, double thickness) {
        return String.format(Locale.ROOT, form, thickness / INCH);
    }
}
