package dev.underprop.engine.clause.ibc2021;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Outcome;
import java.util.List;
import java.util.Locale;

/**
 * Table 1806.2: presumptive load-bearing values. For undisturbed ground only; mud, organic soils, peat and fill without
 * preparation have none (1806.2). The value of clay and silt is the least; below it the ground wants investigation.
 */
public final class Table1806_2 {

    private static final Citation TABLE =
            Citation.read("IBC", "2021", "Table 1806.2 (figures read in the 2012 edition)");
    private static final Citation NO_VALUE = Citation.remembered("IBC", "2021", "1806.2");

    /** One pound-force per square foot (Pa). */
    private static final double PSF = 4.4482216152605 / (0.3048 * 0.3048);

    private static final List<String> WITHOUT_VALUE = List.of(
            "mud",
            "organic silt",
            "organic clay",
            "organic clays",
            "peat",
            "fill",
            "unprepared fill",
            "ol",
            "oh",
            "pt");

    private Table1806_2() {}

    /** Presumptive vertical foundation pressure (Pa). */
    public static Cited pressure(SoilClass soil) {
        return new Cited(soil.psf() * PSF, "qa", TABLE);
    }

    /**
     * Presumptive vertical foundation pressure (Pa) of a soil as a plan names it.
     *
     * @return the value, or refused for a soil that has none or that the table does not name
     */
    public static Outcome pressure(String soil) {
        if (WITHOUT_VALUE.contains(soil.strip().toLowerCase(Locale.ROOT))) {
            return new Outcome.Refused("this ground has no presumptive value; it wants investigation", NO_VALUE);
        }
        return SoilClass.named(soil)
                .<Outcome>map(named -> new Outcome.Value(pressure(named)))
                .orElseGet(() -> new Outcome.Refused("the table does not name this soil", TABLE));
    }
}
