package dev.underprop.wire.catalogue;

import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.standard.Citation;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The tables of lumber that this version looks up, NDS Supplement 2018. Only sizes and values whose source is named are
 * here. Thread-safe: nothing changes after loading.
 */
public final class Catalogue {

    private static final List<String> TABLES =
            List.of("species.csv", "grades.csv", "dressed-sizes.csv", "lumber-values.csv");
    private static final Pattern NOT_IN_GRADES = Pattern.compile("[ .\t]");
    private static final Pattern BLANKS = Pattern.compile("[ \t]");
    private static final double INCH = 0.0254;
    private static final double PSI = 4.4482216152605 / (INCH * INCH);
    /** Stands for the width where one row holds for all. */
    static final String ANY_WIDTH = "any";

    /** Nominal widths of Table 4B, and the dressed width of each (in). */
    private static final Map<String, Double> WIDTHS = widths();

    private static final class Holder {
        static final Catalogue STANDARD = load();
    }

    private final List<Species> species;
    private final Map<String, List<String>> grades;
    private final List<DressedSize> sizes;
    private final Map<List<String>, WoodGrade> values;
    private final String digest;
    private final Map<String, Species> speciesBySpelling = new HashMap<>();
    private final Map<String, String> gradeBySpelling = new HashMap<>();
    private final Map<String, DressedSize> sizeByName = new HashMap<>();
    private final Map<String, List<String>> gradesBySpecies = new HashMap<>();

    private Catalogue(
            List<Species> species,
            Map<String, List<String>> grades,
            List<DressedSize> sizes,
            Map<List<String>, WoodGrade> values,
            String digest) {
        this.species = species;
        this.grades = grades;
        this.sizes = sizes;
        this.values = values;
        this.digest = digest;
        for (Species one : species) {
            speciesBySpelling.putIfAbsent(one.name().toLowerCase(Locale.ROOT), one);
            one.spellings().forEach(spelling -> speciesBySpelling.putIfAbsent(spelling, one));
            gradesBySpecies.put(
                    one.name(),
                    grades.keySet().stream().filter(grade -> holds(one, grade)).toList());
        }
        grades.forEach((grade, spellings) -> spellings.forEach(one -> gradeBySpelling.putIfAbsent(one, grade)));
        sizes.forEach(one -> sizeByName.putIfAbsent(one.name(), one));
    }

    private boolean holds(Species of, String grade) {
        return values.keySet().stream()
                .anyMatch(key -> key.get(0).equals(of.name()) && key.get(1).equals(grade));
    }

    /** The catalogue of this version. */
    public static Catalogue standard() {
        return Holder.STANDARD;
    }

    /** SHA-256 over the bytes of all tables in a fixed order, lower-case hexadecimal. */
    public String digest() {
        return digest;
    }

    /** The species group that a plan means. */
    public Optional<Species> species(String text) {
        return Optional.ofNullable(speciesBySpelling.get(text.strip().toLowerCase(Locale.ROOT)));
    }

    /** All species groups, in the order of the table. */
    List<Species> species() {
        return species;
    }

    /** All sizes, in the order of the table. */
    List<DressedSize> sizes() {
        return sizes;
    }

    /** All reference values, in the order of the table, each under its species, grade and width. */
    Map<List<String>, WoodGrade> values() {
        return Collections.unmodifiableMap(values);
    }

    /** Names of all species groups. */
    public List<String> speciesNames() {
        return species.stream().map(Species::name).toList();
    }

    /** The grade that a plan means, as the tables write it; whether a species has it is another matter. */
    public Optional<String> grade(String text) {
        return Optional.ofNullable(gradeBySpelling.get(
                NOT_IN_GRADES.matcher(text.toLowerCase(Locale.ROOT)).replaceAll("")));
    }

    /** Grades that the tables hold of a species group. */
    public List<String> gradesOf(Species of) {
        return gradesBySpecies.getOrDefault(of.name(), List.of());
    }

    /** The size as sold that a plan means. */
    public Optional<DressedSize> size(String text) {
        return Optional.ofNullable(
                sizeByName.get(BLANKS.matcher(text.toLowerCase(Locale.ROOT)).replaceAll("")));
    }

    /** Names of all sizes. */
    public List<String> sizeNames() {
        return sizes.stream().map(DressedSize::name).toList();
    }

    /**
     * Reference values. Where they depend on the width (Southern Pine), a width between two rows takes the row of the
     * wider, whose values are lower; a width above the last row takes the last, to which the engine applies the factor
     * 0.9 that the table asks for.
     *
     * @param of species group
     * @param grade as the tables write it
     * @param depth width of the piece (m)
     */
    public Optional<WoodGrade> values(Species of, String grade, double depth) {
        WoodGrade plain = values.get(List.of(of.name(), grade, ANY_WIDTH));
        return Optional.ofNullable(plain != null ? plain : values.get(List.of(of.name(), grade, width(depth))));
    }

    private static String width(double depth) {
        String row = "";
        for (Map.Entry<String, Double> width : WIDTHS.entrySet()) {
            row = width.getKey();
            if (depth <= width.getValue() * INCH + 1e-9) {
                break;
            }
        }
        return row;
    }

    private static Map<String, Double> widths() {
        Map<String, Double> widths = new LinkedHashMap<>();
        widths.put("4", 3.5);
        widths.put("6", 5.5);
        widths.put("8", 7.25);
        widths.put("10", 9.25);
        widths.put("12", 11.25);
        return widths;
    }

    private static Catalogue load() {
        List<Table> tables = TABLES.stream().map(Table::read).toList();
        List<Species> species = tables.get(0).rows().stream()
                .map(row -> new Species(
                        row.get(0),
                        List.of(row.get(1).split("\\|")),
                        WoodGrade.Sizes.valueOf(row.get(2)),
                        Double.parseDouble(row.get(3)),
                        cited(row, 4)))
                .toList();
        Map<String, List<String>> grades = new LinkedHashMap<>();
        tables.get(1)
                .rows()
                .forEach(row -> grades.put(row.get(0), List.of(row.get(1).split("\\|"))));
        List<DressedSize> sizes = tables.get(2).rows().stream()
                .map(row -> new DressedSize(row.get(0), inches(row.get(1)), inches(row.get(2)), cited(row, 3)))
                .toList();
        return new Catalogue(species, grades, sizes, values(tables.get(3), species), digest(tables));
    }

    private static double inches(String text) {
        return Double.parseDouble(text) * INCH;
    }

    private static Map<List<String>, WoodGrade> values(Table table, List<Species> species) {
        Map<List<String>, WoodGrade> values = new LinkedHashMap<>();
        for (List<String> row : table.rows()) {
            Species of = species.stream()
                    .filter(one -> one.name().equals(row.get(0)))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("no species " + row.get(0)));
            values.put(List.of(row.get(0), row.get(1), row.get(2)), grade(row, of));
        }
        return values;
    }

    private static WoodGrade grade(List<String> row, Species of) {
        boolean ownStudFactors = row.get(1).equals("Stud") && of.sizes() == WoodGrade.Sizes.WESTERN_DIMENSION;
        List<Double> psi = new ArrayList<>();
        for (int i = 3; i < 10; i++) {
            psi.add(Double.parseDouble(row.get(i)) * PSI);
        }
        return new WoodGrade(
                of.name(),
                row.get(1),
                psi.get(0),
                psi.get(1),
                psi.get(2),
                psi.get(3),
                psi.get(4),
                psi.get(5),
                psi.get(6),
                of.gravity(),
                ownStudFactors ? WoodGrade.Sizes.WESTERN_STUD : of.sizes(),
                citation(row));
    }

    private static Citation citation(List<String> row) {
        Citation table = cited(row, 10);
        String locator = table.locator() + ", " + row.get(0);
        return new Citation(table.document(), table.edition(), locator, table.standing());
    }

    /** The four fields of a source: document, edition, locator, standing. */
    private static Citation cited(List<String> row, int from) {
        String document = row.get(from);
        String edition = row.get(from + 1);
        String locator = row.get(from + 2);
        return row.get(from + 3).startsWith("read")
                ? Citation.read(document, edition, locator)
                : Citation.remembered(document, edition, locator);
    }

    private static String digest(List<Table> tables) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            for (int i = 0; i < tables.size(); i++) {
                sha.update(TABLES.get(i).getBytes(StandardCharsets.UTF_8));
                sha.update(tables.get(i).bytes());
            }
            return HexFormat.of().formatHex(sha.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
