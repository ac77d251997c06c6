package dev.underprop.wire.catalogue;

import dev.underprop.api.model.CatalogueEntry;
import dev.underprop.api.model.CatalogueValue;
import dev.underprop.engine.clause.bowles5.Table9_1;
import dev.underprop.engine.clause.ibc2021.Section1806;
import dev.underprop.engine.clause.nds2018.LagSize;
import dev.underprop.engine.standard.Cited;
import dev.underprop.wire.quantity.Dimension;
import dev.underprop.wire.quantity.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What stands in tables of the engine, as entries: what is computed with is what is shown. */
final class EngineEntries {

    private EngineEntries() {}

    static List<CatalogueEntry> lagScrews() {
        return Arrays.stream(LagSize.values()).map(EngineEntries::lagScrew).toList();
    }

    private static CatalogueEntry lagScrew(LagSize size) {
        Cited diameter = new Cited(size.diameter(), "D", size.root().citation());
        CatalogueValue nominal = Values.of("nominal diameter", Kind.SIZE, Dimension.LENGTH, diameter);
        return new CatalogueEntry()
                .id("lag-screw-" + slug(nominal.getValue()))
                .table("nds-l2")
                .name("Lag screw " + nominal.getValue())
                .values(List.of(
                        nominal,
                        Values.of("root diameter", Kind.SIZE, Dimension.LENGTH, size.root()),
                        Values.of("bending yield strength", Kind.STRESS, Dimension.PRESSURE, size.yield())));
    }

    static List<CatalogueEntry> soils() {
        return Arrays.stream(Section1806.SoilClass.values())
                .map(EngineEntries::soil)
                .toList();
    }

    private static CatalogueEntry soil(Section1806.SoilClass soil) {
        return new CatalogueEntry()
                .id("ibc-" + soil.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .table("ibc-1806.2")
                .name(soil.title())
                .spellings(soil.names().subList(1, soil.names().size()))
                .note("For undisturbed ground. Mud, organic soil, peat and unprepared fill have no value.")
                .values(List.of(Values.of(
                        "allowable pressure", Kind.PRESSURE, Dimension.PRESSURE, Section1806.pressure(soil))));
    }

    static List<CatalogueEntry> subgrades() {
        return Arrays.stream(Table9_1.Row.values()).map(EngineEntries::subgrade).toList();
    }

    private static CatalogueEntry subgrade(Table9_1.Row row) {
        List<CatalogueValue> values = new ArrayList<>();
        values.add(modulus("least modulus of subgrade reaction", row.from()));
        CatalogueEntry entry = new CatalogueEntry()
                .id("subgrade-" + row.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .table("bowles-9-1")
                .name(row.title());
        if (Double.isInfinite(row.to())) {
            entry.note("The table gives no greatest modulus.");
        } else {
            values.add(modulus("greatest modulus of subgrade reaction", row.to()));
        }
        return entry.values(values);
    }

    private static CatalogueValue modulus(String name, double value) {
        return Values.of(
                name, Kind.SUBGRADE_MODULUS, Dimension.SUBGRADE_MODULUS, new Cited(value, "ks", Table9_1.citation()));
    }

    private static String slug(String text) {
        return text.replace(" in", "").replace('.', '-');
    }
}
