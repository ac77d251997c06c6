package dev.underprop.wire.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.api.model.CatalogueEntry;
import dev.underprop.api.model.CataloguePage;
import dev.underprop.api.model.CataloguePart;
import dev.underprop.api.model.CatalogueValue;
import dev.underprop.engine.clause.nds2018.LagSize;
import dev.underprop.wire.quantity.Dimension;
import dev.underprop.wire.quantity.Quantity;
import dev.underprop.wire.quantity.QuantityReading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PartsTest {
    private static final Parts PARTS = Parts.standard();
    private static final double INCH = 0.0254;

    static List<String> names() {
        return PARTS.names();
    }

    @Test
    void partsAndTheirEntriesAreAsCounted() {
        assertThat(PARTS.index().getParts())
                .extracting(part -> part.getPart() + " " + part.getEntries())
                .containsExactly(
                        "lumber-sizes 15",
                        "lumber-species 4",
                        "lumber-grades 42",
                        "timber-sizes 10",
                        "timber-grades 15",
                        "tubes 52",
                        "acme-screws 15",
                        "lag-screws 9",
                        "soils 71",
                        "subgrades 8",
                        "live-loads 26",
                        "dead-loads 33");
    }

    @Test
    void idsAreHeldOnceInAllParts() {
        assertThat(all().map(CatalogueEntry::getId)).doesNotHaveDuplicates().allMatch(id -> id.matches("[a-z0-9.-]+"));
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyValueHasItsSource(String part) {
        for (CatalogueEntry entry : entries(part)) {
            assertThat(entry.getValues()).as(entry.getId()).isNotEmpty();
            assertThat(entry.getName()).isNotBlank();
            assertThat(entry.getTable()).isNotBlank();
            assertThat(entry.getValues()).as(entry.getId()).allSatisfy(value -> {
                assertThat(value.getSource().getDocument()).isNotBlank();
                assertThat(value.getSource().getEdition()).isNotBlank();
                assertThat(value.getSource().getLocator()).isNotBlank();
                assertThat(value.getSource().getStanding()).isIn("read", "mixed", "from memory", "common practice");
            });
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void planReadsEveryValueBack(String part) {
        for (CatalogueEntry entry : entries(part)) {
            for (CatalogueValue value : entry.getValues()) {
                assertThat(si(value)).as(entry.getId() + " " + value.getName()).isPositive();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void namesOfValuesStandOnceInAnEntry(String part) {
        for (CatalogueEntry entry : entries(part)) {
            assertThat(entry.getValues()).extracting(CatalogueValue::getName).doesNotHaveDuplicates();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "grade-hem-fir-no-2, Fb, 850 psi",
        "grade-hem-fir-no-2, E, 1300000 psi",
        "grade-southern-pine-no-2-10, Fb, 800 psi",
        "lumber-2x10, d, 9.25 in",
        "species-hem-fir, G, 0.43",
        "timber-6x8, '', 5.5 in",
        "douglas-fir-larch-post-1, Fb, 1200 psi",
        "pipe-3-std, D, 3.5 in",
        "pipe-3-std, t, 0.216 in",
        "hss3.500x0.216, t, 0.216 in",
        "acme-1-1-2-4, p, 1/4 in",
        "lag-screw-0-375, Dr, 0.265 in",
        "lag-screw-0-375, Fyb, 45000 psi",
        "ibc-sand, q, 2000 psf",
        "irc-sand, q, 2000 psf",
        "irc-live-sleeping-rooms, '', 30 psf",
        "hud-dead-floor-wood, '', 12 psf"
    })
    void valuesAsPrinted(String id, String symbol, String text) {
        CatalogueEntry entry =
                all().filter(one -> one.getId().equals(id)).findFirst().orElseThrow();
        CatalogueValue value = entry.getValues().stream()
                .filter(one -> symbol.isEmpty() || symbol.equals(one.getSymbol()))
                .findFirst()
                .orElseThrow();
        assertThat(value.getValue()).isEqualTo(text);
    }

    @Test
    void lagScrewsShownAreThoseThatPlansMayUse() {
        List<Double> shown = entries("lag-screws").stream()
                .map(entry -> si(entry.getValues().get(0)))
                .toList();
        assertThat(shown.stream().map(LagSize::of).map(size -> size.orElseThrow()))
                .containsExactly(LagSize.values());
    }

    @Test
    void dimensionLumberShownCanBeNamed() {
        Catalogue lumber = Catalogue.standard();
        assertThat(entries("lumber-sizes")).allSatisfy(entry -> {
            DressedSize size = lumber.size(entry.getName()).orElseThrow();
            assertThat(si(entry.getValues().get(1))).isCloseTo(size.depth(), within(1e-9));
        });
        assertThat(entries("lumber-species"))
                .flatExtracting(CatalogueEntry::getSpellings)
                .allSatisfy(spelling ->
                        assertThat(lumber.species((String) spelling)).isPresent());
    }

    /** A screw of one pitch a turn has its root a pitch below the outside; no pitch eats up the core. */
    @Test
    void screwsHaveTheirThreadsToTheInch() {
        assertThat(entries("acme-screws")).allSatisfy(entry -> {
            double diameter = si(entry.getValues().get(0));
            double pitch = si(entry.getValues().get(1));
            assertThat(pitch * si(entry.getValues().get(2))).isCloseTo(INCH, within(1e-12));
            assertThat(pitch).isLessThan(diameter / 2);
        });
    }

    @Test
    void tubesHaveAHollow() {
        assertThat(entries("tubes"))
                .allSatisfy(entry -> assertThat(si(entry.getValues().get(1)))
                        .isLessThan(si(entry.getValues().get(0)) / 4));
    }

    @Test
    void rangesOfSoilsAreInOrder() {
        List<CatalogueEntry> ranges = entries("soils").stream()
                .filter(entry -> entry.getTable().equals("navfac-dm-7.02"))
                .toList();
        assertThat(ranges).hasSize(21).allSatisfy(entry -> {
            double least = si(entry.getValues().get(0));
            double greatest = si(entry.getValues().get(1));
            assertThat(si(entry.getValues().get(2))).isBetween(least, greatest);
            assertThat(least).isLessThan(greatest);
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7, 200})
    void pagesGoThroughAllEntriesOnce(int limit) {
        for (CataloguePart part : PARTS.index().getParts()) {
            List<String> ids = new ArrayList<>();
            Integer next = 0;
            while (next != null) {
                CataloguePage page = page(part.getPart(), new Wanted("", "", limit, next));
                assertThat(page.getTotal()).isEqualTo(part.getEntries());
                assertThat(page.getEntries()).hasSizeBetween(1, limit);
                page.getEntries().forEach(entry -> ids.add(entry.getId()));
                next = page.getNext();
            }
            assertThat(ids).hasSize(part.getEntries()).doesNotHaveDuplicates();
        }
    }

    @Test
    void pageBeyondTheLastIsEmptyAndTheLast() {
        CataloguePage page = page("soils", new Wanted("", "", 10, 71));
        assertThat(page.getEntries()).isEmpty();
        assertThat(page.getNext()).isNull();
        assertThat(page.getTotal()).isEqualTo(71);
    }

    @ParameterizedTest
    @CsvSource({
        "silty sand, ibc-1806.2, 1",
        "SILTY, ibc-1806.2, 2",
        "GW, ibc-1806.2, 1",
        "'', irc-r401.4.1, 5",
        "'', is-1904, 15",
        "granite, '', 0",
        "clay, is-1904, 5",
        "SILTY   Sand, ibc-1806.2, 1",
        "sand silty, ibc-1806.2, 0"
    })
    void filters(String words, String table, int found) {
        assertThat(page("soils", new Wanted(words, table, 200, 0)).getEntries()).hasSize(found);
    }

    @Test
    void everyTableOfAPartHasEntries() {
        for (String part : PARTS.names()) {
            int sum = PARTS.tables(part).stream()
                    .mapToInt(table -> page(part, new Wanted("", table, 200, 0)).getTotal())
                    .sum();
            assertThat(sum).isEqualTo(entries(part).size());
        }
    }

    @Test
    void unknownPartIsNoPage() {
        assertThat(PARTS.page("soil", new Wanted("", "", 1, 0))).isEmpty();
        assertThat(PARTS.tables("soil")).isEmpty();
    }

    @Test
    void wantedKeepsToItsLimits() {
        assertThatThrownBy(() -> new Wanted("", "", 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Wanted("", "", 201, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Wanted("", "", 1, -1)).isInstanceOf(IllegalArgumentException.class);
    }

    private static double si(CatalogueValue value) {
        if (value.getKind().equals(Values.NUMBER)) {
            return Double.parseDouble(value.getValue());
        }
        Dimension dimension = Arrays.stream(Dimension.values())
                .filter(one -> one.noun().equals(value.getKind()))
                .findFirst()
                .orElseThrow();
        QuantityReading reading = Quantity.parse(value.getValue(), dimension);
        assertThat(reading).as(value.getValue()).isInstanceOf(QuantityReading.Value.class);
        return ((QuantityReading.Value) reading).si();
    }

    private static Stream<CatalogueEntry> all() {
        return PARTS.names().stream().flatMap(part -> entries(part).stream());
    }

    private static List<CatalogueEntry> entries(String part) {
        return page(part, new Wanted("", "", Wanted.MOST, 0)).getEntries();
    }

    private static CataloguePage page(String part, Wanted wanted) {
        return PARTS.page(part, wanted).orElseThrow();
    }
}
