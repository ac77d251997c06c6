package dev.underprop.wire.catalogue;

import dev.underprop.api.model.CatalogueEntry;
import dev.underprop.api.model.CataloguePage;
import dev.underprop.api.model.CataloguePart;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A part of the catalogue.
 *
 * @param name in the address
 * @param title what it holds
 * @param use what a plan can do with it
 * @param entries in a fixed order
 */
record Part(String name, String title, String use, List<CatalogueEntry> entries) {

    Part {
        entries = List.copyOf(entries);
    }

    List<String> tables() {
        return entries.stream().map(CatalogueEntry::getTable).distinct().toList();
    }

    CataloguePart summary() {
        return new CataloguePart()
                .part(name)
                .title(title)
                .use(use)
                .tables(tables())
                .entries(entries.size());
    }

    CataloguePage page(Wanted wanted) {
        List<CatalogueEntry> found =
                entries.stream().filter(entry -> answers(entry, wanted)).toList();
        int from = Math.min(wanted.offset(), found.size());
        int to = Math.min(from + wanted.limit(), found.size());
        CataloguePage page = new CataloguePage()
                .part(name)
                .title(title)
                .use(use)
                .total(found.size())
                .offset(wanted.offset())
                .limit(wanted.limit())
                .entries(found.subList(from, to));
        return to < found.size() ? page.next(to) : page;
    }

    private static boolean answers(CatalogueEntry entry, Wanted wanted) {
        boolean inTable = wanted.table().isEmpty() || wanted.table().equals(entry.getTable());
        return inTable && text(entry).contains(wanted.phrase());
    }

    private static String text(CatalogueEntry entry) {
        List<String> spellings = entry.getSpellings() == null ? List.of() : entry.getSpellings();
        String note = entry.getNote() == null ? "" : entry.getNote();
        return Stream.concat(Stream.of(entry.getId(), entry.getTable(), entry.getName(), note), spellings.stream())
                .reduce("", (one, other) -> one + '\n' + other)
                .toLowerCase(Locale.ROOT);
    }
}
