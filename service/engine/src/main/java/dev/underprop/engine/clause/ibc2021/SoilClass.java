package dev.underprop.engine.clause.ibc2021;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The five classes of materials of Table 1806.2. */
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

    /** All names a plan may give it: the table's, one of the soils in it, or one of its group symbols; lower case. */
    public List<String> names() {
        return names;
    }

    double psf() {
        return psf;
    }

    /** The class a plan names; letter case and outer blanks do not matter. Nothing else is guessed. */
    public static Optional<SoilClass> named(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values()).filter(c -> c.names.contains(wanted)).findFirst();
    }
}
