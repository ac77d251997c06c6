package dev.underprop.wire.catalogue;

import dev.underprop.api.model.CatalogueEntry;
import dev.underprop.api.model.CatalogueIndex;
import dev.underprop.api.model.CataloguePage;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Everything in the catalogue, part by part, to be read: what plans can name, from the tables that plans are read with,
 * and what somebody would otherwise look up in a book. Thread-safe: nothing changes after loading.
 */
public final class Parts {

    private static final String BY_NAME = "A plan names it, in the words of the name or of a spelling.";
    private static final String BY_VALUE =
            "A plan cannot name it; what is used of it is written into the plan as a value.";
    private static final String TO_READ = "To be read; a plan has no place for it yet.";

    private static final class Holder {
        static final Parts STANDARD = load();
    }

    private final List<Part> parts;

    private Parts(List<Part> parts) {
        this.parts = List.copyOf(parts);
    }

    /** The catalogue of this version. */
    public static Parts standard() {
        return Holder.STANDARD;
    }

    /** The parts, with what each is for and how many entries it holds. */
    public CatalogueIndex index() {
        return new CatalogueIndex().parts(parts.stream().map(Part::summary).toList());
    }

    /** Names of all parts. */
    public List<String> names() {
        return parts.stream().map(Part::name).toList();
    }

    /** Tables that the entries of a part belong to; none for an unknown part. */
    public List<String> tables(String part) {
        return named(part).map(Part::tables).orElse(List.of());
    }

    /** A page of a part, or nothing when there is no such part. */
    public Optional<CataloguePage> page(String part, Wanted wanted) {
        return named(part).map(one -> one.page(wanted));
    }

    private Optional<Part> named(String part) {
        return parts.stream().filter(one -> one.name().equals(part)).findFirst();
    }

    private static Parts load() {
        Catalogue lumber = Catalogue.standard();
        return new Parts(List.of(
                new Part("lumber-sizes", "Dimension lumber: dressed sizes", BY_NAME, LumberEntries.sizes(lumber)),
                new Part("lumber-species", "Dimension lumber: species groups", BY_NAME, LumberEntries.species(lumber)),
                new Part("lumber-grades", "Dimension lumber: reference values", BY_NAME, LumberEntries.grades(lumber)),
                new Part("timber-sizes", "Timbers: dressed sizes", TO_READ, EntryTable.read("timber-sizes.csv")),
                new Part("timber-grades", "Timbers: reference values", TO_READ, EntryTable.read("timber-grades.csv")),
                new Part("tubes", "Pipes and round hollow sections", BY_VALUE, EntryTable.read("tubes.csv")),
                new Part("acme-screws", "Acme screws", TO_READ, EntryTable.read("acme-screws.csv")),
                new Part("lag-screws", "Lag screws", "A plan names it by its diameter.", EngineEntries.lagScrews()),
                new Part(
                        "soils",
                        "Allowable pressures of soils",
                        "A plan names table and class, the least of a range counts. Never mix tables.",
                        joined(EngineEntries.soils(), EntryTable.read("soils.csv"))),
                new Part("subgrades", "Moduli of subgrade reaction", TO_READ, EngineEntries.subgrades()),
                new Part("live-loads", "Live loads of rooms", BY_VALUE, EntryTable.read("live-loads.csv")),
                new Part("dead-loads", "Dead loads of materials", BY_VALUE, EntryTable.read("dead-loads.csv"))));
    }

    private static List<CatalogueEntry> joined(List<CatalogueEntry> one, List<CatalogueEntry> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }
}
