package dev.underprop.wire.catalogue;

import dev.underprop.api.model.CatalogueEntry;
import dev.underprop.api.model.CatalogueValue;
import dev.underprop.api.model.Citation;
import java.util.ArrayList;
import java.util.List;

/**
 * Entries from a table of values, a line a value: id, table, name, name of the value, symbol, kind, value, document,
 * edition, locator, standing, note. Lines of one id stand together and make one entry.
 */
final class EntryTable {

    private EntryTable() {}

    static List<CatalogueEntry> read(String name) {
        List<CatalogueEntry> entries = new ArrayList<>();
        String open = "";
        for (List<String> row : Table.read(name).rows()) {
            if (!row.get(0).equals(open)) {
                open = row.get(0);
                entries.add(entry(row));
            }
            entries.get(entries.size() - 1).addValuesItem(value(row));
        }
        return entries;
    }

    private static CatalogueEntry entry(List<String> row) {
        CatalogueEntry entry =
                new CatalogueEntry().id(row.get(0)).table(row.get(1)).name(row.get(2));
        return row.get(11).isEmpty() ? entry : entry.note(row.get(11));
    }

    private static CatalogueValue value(List<String> row) {
        CatalogueValue value = new CatalogueValue()
                .name(row.get(3))
                .kind(row.get(5))
                .value(row.get(6))
                .source(source(row));
        return row.get(4).isEmpty() ? value : value.symbol(row.get(4));
    }

    private static Citation source(List<String> row) {
        return new Citation()
                .document(row.get(7))
                .edition(row.get(8))
                .locator(row.get(9))
                .standing(standing(row.get(10)));
    }

    /** A public copy that was read counts as read. */
    private static String standing(String text) {
        return text.startsWith("read") ? "read" : text;
    }
}
