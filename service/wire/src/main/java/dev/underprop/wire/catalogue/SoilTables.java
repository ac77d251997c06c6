package dev.underprop.wire.catalogue;

import dev.underprop.api.model.CatalogueEntry;
import dev.underprop.api.model.CatalogueValue;
import dev.underprop.engine.standard.Citation;
import dev.underprop.wire.quantity.Dimension;
import dev.underprop.wire.quantity.Quantity;
import dev.underprop.wire.quantity.QuantityReading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Published tables of allowable pressures other than that of the IBC, each by itself. Of a range the least counts. Fill is not looked up. */
public final class SoilTables {

    private static final List<Row> ROWS = EntryTable.read("soils.csv").stream()
            .map(SoilTables::row)
            .filter(row -> !row.name().contains("fill"))
            .toList();

    private static final List<String> IDS =
            ROWS.stream().map(Row::table).distinct().toList();

    private SoilTables() {}

    /**
     * One soil of one table.
     *
     * @param table id of the table
     * @param name as the table has it
     * @param names every name by which it is found, lower case
     * @param pressure allowable (Pa)
     * @param citation where it stands
     */
    public record Row(String table, String name, List<String> names, double pressure, Citation citation) {
        public Row {
            names = List.copyOf(names);
        }
    }

    /** Ids of the tables, in order. */
    public static List<String> ids() {
        return IDS;
    }

    /** Names of the soils of a table. */
    public static List<String> names(String table) {
        return ROWS.stream()
                .filter(row -> row.table().equals(table))
                .flatMap(row -> row.names().stream())
                .toList();
    }

    /** The soil of a table that a plan names; letter case and outer blanks do not matter. */
    public static Optional<Row> find(String table, String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return ROWS.stream()
                .filter(row -> row.table().equals(table) && row.names().contains(wanted))
                .findFirst();
    }

    private static Row row(CatalogueEntry entry) {
        CatalogueValue value = entry.getValues().get(0);
        dev.underprop.api.model.Citation source = value.getSource();
        double pressure = ((QuantityReading.Value) Quantity.parse(value.getValue(), Dimension.PRESSURE)).si();
        Citation citation = source.getStanding().equals("read")
                ? Citation.read(source.getDocument(), source.getEdition(), source.getLocator())
                : Citation.remembered(source.getDocument(), source.getEdition(), source.getLocator());
        return new Row(entry.getTable(), entry.getName(), names(entry), pressure, citation);
    }

    private static List<String> names(CatalogueEntry entry) {
        List<String> names = new ArrayList<>();
        names.add(entry.getName().toLowerCase(Locale.ROOT));
        if (entry.getName().contains(";")) {
            names.addAll(Arrays.asList(entry.getName().toLowerCase(Locale.ROOT).split("; ", -1)));
        }
        return names;
    }
}
