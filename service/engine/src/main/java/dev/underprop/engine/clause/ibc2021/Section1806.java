package dev.underprop.engine.clause.ibc2021;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Section 1806: presumptive load-bearing values of soils. For undisturbed ground; not for mud, organic silt, organic
 * clay, peat or unprepared fill (1806.2).
 */
public final class Section1806 {

    private static final Citation TABLE = Citation.read("IBC", "2021", "Table 1806.2");
    private static final double PSF = 4.4482216152605 / (0.3048 * 0.3048);

    /** The classes of the table. */
    public enum SoilClass {
        CRYSTALLINE_BEDROCK(12000, "crystalline bedrock"),
        SEDIMENTARY_ROCK(4000, "sedimentary and foliated rock", "sedimentary rock", "foliated rock"),
        GRAVEL(3000, "sandy gravel and gravel", "sandy gravel", "gravel"),
        SAND(
                2000,
                "sand, silty sand, clayey sand, silty gravel and clayey gravel",
                "sand",
                "silty sand",
                "clayey sand",
                "silty gravel",
                "clayey gravel"),
        CLAY(
                1500,
                "clay, sandy clay, silty clay, clayey silt, silt and sandy silt",
                "clay",
                "sandy clay",
                "silty clay",
                "clayey silt",
                "silt",
                "sandy silt");

        private final double psf;
        private final List<String> names;

        SoilClass(double psf, String... names) {
            this.psf = psf;
            this.names = List.of(names);
        }

        /** The class as the table names it. */
        public String title() {
            return names.get(0);
        }
    }

    private Section1806() {}

    /** The class a plan names: as the table writes it, or one of the soils in it. */
    public static Optional<SoilClass> classNamed(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(SoilClass.values())
                .filter(c -> c.names.contains(wanted))
                .findFirst();
    }

    /** Every name by which a class can be called, in the order of the table. */
    public static List<String> classNames() {
        return Arrays.stream(SoilClass.values()).flatMap(c -> c.names.stream()).toList();
    }

    /** Presumptive vertical foundation pressure (Pa). */
    public static Cited pressure(SoilClass soil) {
        return new Cited(soil.psf * PSF, "q", TABLE);
    }
}
