package dev.underprop.engine.clause.ibc2021;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Outcome;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Section 1806: presumptive load-bearing values of soils, Table 1806.2. For undisturbed ground only; mud, organic soils,
 * peat and fill without preparation have none (1806.2). The value of clay and silt is the least of the table.
 */
public final class Section1806 {

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

    /** The five classes of materials, with the soils and group symbols that the table counts to each. */
    public enum SoilClass {
        /** Class 1. */
        CRYSTALLINE_BEDROCK(12000, "crystalline bedrock"),
        /** Class 2. */
        SEDIMENTARY_ROCK(4000, "sedimentary and foliated rock", "sedimentary rock", "foliated rock"),
        /** Class 3. */
        GRAVEL(3000, "sandy gravel and gravel", "sandy gravel", "gravel", "gw", "gp"),
        /** Class 4. */
        SAND(
                2000,
                "sand, silty sand, clayey sand, silty gravel and clayey gravel",
                "sand",
                "silty sand",
                "clayey sand",
                "silty gravel",
                "clayey gravel",
                "sw",
                "sp",
                "sm",
                "sc",
                "gm",
                "gc"),
        /** Class 5. */
        CLAY(
                1500,
                "clay, sandy clay, silty clay, clayey silt, silt and sandy silt",
                "clay",
                "sandy clay",
                "silty clay",
                "clayey silt",
                "silt",
                "sandy silt",
                "cl",
                "ml",
                "mh",
                "ch");

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

        /** All names a plan may give it, lower case: the table's, its soils, its group symbols. */
        public List<String> names() {
            return names;
        }
    }

    private static final Map<String, SoilClass> BY_NAME = byName();

    private Section1806() {}

    private static Map<String, SoilClass> byName() {
        Map<String, SoilClass> byName = new HashMap<>();
        for (SoilClass one : SoilClass.values()) {
            one.names.forEach(name -> byName.putIfAbsent(name, one));
        }
        return byName;
    }

    /** The class a plan names; letter case and outer blanks do not matter. Nothing else is guessed. */
    public static Optional<SoilClass> classNamed(String name) {
        return Optional.ofNullable(BY_NAME.get(name.strip().toLowerCase(Locale.ROOT)));
    }

    /** Whether the section gives ground of a name no presumptive value. */
    public static boolean withoutValue(String soil) {
        return WITHOUT_VALUE.contains(soil.strip().toLowerCase(Locale.ROOT));
    }

    /** Every name by which a class can be called, in the order of the table. */
    public static List<String> classNames() {
        return Arrays.stream(SoilClass.values()).flatMap(c -> c.names.stream()).toList();
    }

    /** Presumptive vertical foundation pressure (Pa). */
    public static Cited pressure(SoilClass soil) {
        return new Cited(soil.psf * PSF, "q", TABLE);
    }

    /**
     * Presumptive vertical foundation pressure (Pa) of a soil as a plan names it.
     *
     * @return the value, or refused for a soil that has none or that the table does not name
     */
    public static Outcome pressure(String soil) {
        if (withoutValue(soil)) {
            return new Outcome.Refused("this ground has no presumptive value; it wants investigation", NO_VALUE);
        }
        return classNamed(soil)
                .<Outcome>map(named -> new Outcome.Value(pressure(named)))
                .orElseGet(() -> new Outcome.Refused("the table does not name this soil", TABLE));
    }
}
