package dev.underprop.wire.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.api.model.CatalogueEntry;
import dev.underprop.api.model.CatalogueValue;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Fixtures;
import dev.underprop.wire.quantity.Dimension;
import dev.underprop.wire.quantity.Quantity;
import dev.underprop.wire.quantity.QuantityReading;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Tables of the fixtures that the engine does not hold, read back from the catalogue as anybody gets them. */
class PublishedTablesTest {

    private static final Map<String, String> PARTS =
            Map.of("soil-table", "soils", "dead-loads", "dead-loads", "live-loads", "live-loads");

    private static final Map<String, String> SPECIES =
            Map.of("DF-L", "Douglas Fir-Larch", "HF", "Hem-Fir", "SPF", "Spruce-Pine-Fir", "SP", "Southern Pine");

    private static final Map<String, List<String>> GRADES = Map.of(
            "SS", List.of("Select Structural"),
            "No.1&Btr", List.of("No.1 & Btr"),
            "No.3 & Stud", List.of("No.3", "Stud"));

    /** Uses whose entries bear another name. */
    private static final Map<String, String> USES = Map.ofEntries(
            Map.entry("hud-3.4-live/floor", "hud-live-other-areas"),
            Map.entry("hud-3.4-live/roof steeper 4 12", "hud-live-roof-steep"),
            Map.entry("hud-3.4-live/roof flatter", "hud-live-roof-flat"),
            Map.entry("irc-r301.5-live/habitable attic or attic with fixed stair", "irc-live-habitable-attic"),
            Map.entry("irc-r301.5-live/attic with limited storage", "irc-live-attic-storage"),
            Map.entry("irc-r301.5-live/attic without storage", "irc-live-attic-no-storage"),
            Map.entry("irc-r301.5-live-other-rows/guards and handrails", "irc-live-guards"));

    /** Rows that are no entry of the catalogue. */
    private static final Map<String, String> LEFT = Map.of(
            "hud-3.2-dead/floor no ceiling gypsum subtract", "taken off another row, no weight of its own",
            "hud-3.2-dead/wall 2x6 add", "added to another row, no weight of its own",
            "irc-r301.5-live-other-rows/guard infill", "no load on a floor");

    private static final Map<String, Double> UNITS = Map.of(
            "psf",
            47.88025898033584,
            "kPa",
            1e3,
            "lbf",
            4.4482216152605,
            "lbf/ft",
            14.593902937206364,
            "psi",
            6894.757293168361);

    @TestFactory
    Stream<DynamicTest> everyRowStandsInTheCatalogue() {
        return Fixtures.all().stream()
                .filter(c -> PARTS.containsKey(c.kind()) || c.kind().equals("lumber-values"))
                .flatMap(c -> c.expected().stream()
                        .filter(e -> !LEFT.containsKey(row(c, e)))
                        .map(e -> DynamicTest.dynamicTest(c + " " + e, () -> check(c, e))));
    }

    @Test
    void whatIsLeftOutStandsInTheFixtures() {
        Set<String> rows = Fixtures.all().stream()
                .filter(c -> PARTS.containsKey(c.kind()))
                .flatMap(c -> c.expected().stream().map(e -> row(c, e)))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(rows).containsAll(LEFT.keySet()).containsAll(USES.keySet());
    }

    private static void check(Case table, Expected row) {
        List<CatalogueEntry> found =
                table.kind().equals("lumber-values") ? grades(table, row) : List.of(entry(table, row));
        assertThat(found).isNotEmpty().allSatisfy(entry -> {
            List<Double> values = entry.getValues().stream()
                    .filter(value -> !table.kind().equals("lumber-values")
                            || row.name().replace('_', '-').equals(value.getSymbol()))
                    .map(PublishedTablesTest::si)
                    .toList();
            double unit = UNITS.get(row.unit());
            assertThat(values)
                    .as(entry.getId())
                    .anyMatch(value -> row.check(value / unit).agrees());
        });
    }

    private static String row(Case table, Expected row) {
        return switch (table.kind()) {
            case "soil-table" -> table.id() + "/" + row.given().text("soil");
            case "dead-loads" -> table.id() + "/" + row.given().text("item");
            case "live-loads" -> table.id() + "/" + row.given().text("use");
            default -> table.id();
        };
    }

    private static CatalogueEntry entry(Case table, Expected row) {
        List<CatalogueEntry> entries = entries(PARTS.get(table.kind()));
        String name = row(table, row).substring(table.id().length() + 1);
        if (table.kind().equals("soil-table")) {
            return one(entries.stream()
                    .filter(e -> e.getTable().equals(table.id()) && e.getName().equals(name.replace(',', ';'))));
        }
        String prefix = table.id().startsWith("hud") ? "hud" : "irc";
        String id = prefix + (table.kind().equals("dead-loads") ? "-dead-" : "-live-") + slug(name);
        String wanted = USES.getOrDefault(row(table, row), id);
        return one(entries.stream().filter(e -> e.getId().equals(wanted)));
    }

    /** The entries of a grade; of all widths where the row holds for all. */
    private static List<CatalogueEntry> grades(Case table, Expected row) {
        boolean timber = table.inputs().text("table").equals("4D");
        String grade = table.inputs().text("grade");
        String species = SPECIES.get(table.inputs().text("species"));
        String width = row.given().has("nominalWidth_in")
                ? ", nominal width " + (int) row.given().number("nominalWidth_in") + " in"
                : "";
        String kind = timber ? " (" + table.inputs().text("class").replace(", wet or dry", "") + ")" : "";
        return GRADES.getOrDefault(grade, List.of(grade)).stream()
                .flatMap(one -> named(timber ? "timber-grades" : "lumber-grades", species + " " + one, kind + width))
                .toList();
    }

    private static Stream<CatalogueEntry> named(String part, String label, String ending) {
        List<CatalogueEntry> found = entries(part).stream()
                .filter(e -> e.getName().equals(label + ending)
                        || ending.isEmpty() && e.getName().startsWith(label + ", nominal width"))
                .toList();
        assertThat(found).as(label + ending).isNotEmpty();
        return found.stream();
    }

    private static CatalogueEntry one(Stream<CatalogueEntry> found) {
        List<CatalogueEntry> all = found.toList();
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static List<CatalogueEntry> entries(String part) {
        return Parts.standard()
                .page(part, new Wanted("", "", Wanted.MOST, 0))
                .orElseThrow()
                .getEntries();
    }

    private static double si(CatalogueValue value) {
        Dimension dimension = Arrays.stream(Dimension.values())
                .filter(one -> one.noun().equals(value.getKind()))
                .findFirst()
                .orElseThrow();
        return ((QuantityReading.Value) Quantity.parse(value.getValue(), dimension)).si();
    }

    private static String slug(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }
}
