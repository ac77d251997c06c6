package dev.underprop.wire.catalogue;

import dev.underprop.api.model.CatalogueEntry;
import dev.underprop.api.model.CatalogueValue;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.standard.Cited;
import dev.underprop.wire.quantity.Dimension;
import dev.underprop.wire.quantity.Kind;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The lumber that plans name, as entries: what is looked up is what is shown. */
final class LumberEntries {

    private static final Map<WoodGrade.Sizes, String> TABLES = Map.of(
            WoodGrade.Sizes.WESTERN_DIMENSION, "nds-4a",
            WoodGrade.Sizes.WESTERN_STUD, "nds-4a",
            WoodGrade.Sizes.SOUTHERN_PINE, "nds-4b",
            WoodGrade.Sizes.TIMBER_4D, "nds-4d");

    private LumberEntries() {}

    static List<CatalogueEntry> sizes(Catalogue catalogue) {
        return catalogue.sizes().stream().map(LumberEntries::size).toList();
    }

    private static CatalogueEntry size(DressedSize size) {
        return new CatalogueEntry()
                .id("lumber-" + size.name())
                .table("nds-1b")
                .name(size.name())
                .values(List.of(
                        length("breadth", new Cited(size.breadth(), "b", size.citation())),
                        length("depth", new Cited(size.depth(), "d", size.citation()))));
    }

    static List<CatalogueEntry> species(Catalogue catalogue) {
        return catalogue.species().stream().map(LumberEntries::species).toList();
    }

    private static CatalogueEntry species(Species species) {
        return new CatalogueEntry()
                .id("species-" + slug(species.name()))
                .table(TABLES.get(species.sizes()))
                .name(species.name())
                .spellings(species.spellings())
                .values(List.of(
                        Values.number("specific gravity", new Cited(species.gravity(), "G", species.citation())),
                        Values.of(
                                "weight at 19 % moisture",
                                Kind.UNIT_WEIGHT,
                                Dimension.UNIT_WEIGHT,
                                new Cited(species.unitWeight(), "γ", Species.WEIGHT))));
    }

    static List<CatalogueEntry> grades(Catalogue catalogue) {
        return catalogue.values().entrySet().stream()
                .map(one -> grade(one.getKey().get(2), one.getValue()))
                .toList();
    }

    private static CatalogueEntry grade(String width, WoodGrade grade) {
        boolean any = width.equals(Catalogue.ANY_WIDTH);
        CatalogueEntry entry = new CatalogueEntry()
                .id("grade-" + slug(grade.label()) + (any ? "" : "-" + width))
                .table(TABLES.get(grade.sizes()))
                .name(grade.label() + (any ? "" : ", nominal width " + width + " in"))
                .values(List.of(
                        stress("bending", "Fb", grade.bending(), grade),
                        stress("tension along the grain", "Ft", grade.tension(), grade),
                        stress("shear", "Fv", grade.shear(), grade),
                        stress("compression across the grain", "Fc-perp", grade.bearing(), grade),
                        stress("compression along the grain", "Fc", grade.compression(), grade),
                        stress("modulus of elasticity", "E", grade.modulus(), grade),
                        stress("modulus of elasticity for stability", "Emin", grade.modulusMin(), grade)));
        return entry.note(
                any
                        ? "Reference values, before size, moisture, duration and other factors."
                        : "Reference values with the size in them, before moisture, duration and other factors.");
    }

    private static CatalogueValue stress(String name, String symbol, double value, WoodGrade grade) {
        return Values.of(name, Kind.STRESS, Dimension.PRESSURE, new Cited(value, symbol, grade.citation()));
    }

    private static CatalogueValue length(String name, Cited value) {
        return Values.of(name, Kind.SIZE, Dimension.LENGTH, value);
    }

    private static String slug(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }
}
