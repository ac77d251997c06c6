package dev.underprop.app.report;

import dev.underprop.api.model.CatalogueEntry;
import dev.underprop.api.model.CatalogueIndex;
import dev.underprop.api.model.CataloguePart;
import dev.underprop.api.model.CatalogueValue;
import dev.underprop.wire.fault.Nearest;
import java.util.List;

/** The catalogue as text. */
public final class CatalogueText {
    private CatalogueText() {}

    /** The parts, each with its tables. */
    public static String of(CatalogueIndex index) {
        StringBuilder out = new StringBuilder();
        for (CataloguePart part : index.getParts()) {
            out.append(part.getPart())
                    .append("  ")
                    .append(part.getTitle())
                    .append(" (")
                    .append(part.getEntries());
            out.append(part.getEntries() == 1 ? " entry)\n" : " entries)\n");
            out.append(Lines.wrapped("  ", 2, part.getUse()));
            out.append(Lines.wrapped("  ", 2, "Tables: " + String.join(", ", part.getTables()) + "."));
        }
        return out.toString();
    }

    /** Entries, each value with its source. */
    public static String of(List<CatalogueEntry> entries) {
        StringBuilder out = new StringBuilder();
        entries.forEach(entry -> entry(out, entry));
        return out.toString();
    }

    private static void entry(StringBuilder out, CatalogueEntry entry) {
        out.append(Lines.wrapped("", 2, entry.getName() + " (" + entry.getId() + "; table " + entry.getTable() + ")"));
        List<String> spellings = entry.getSpellings();
        if (spellings != null && !spellings.isEmpty()) {
            out.append(Lines.wrapped("  ", 4, "also: " + String.join(", ", spellings)));
        }
        if (entry.getNote() != null) {
            out.append(Lines.wrapped("  ", 4, entry.getNote()));
        }
        entry.getValues().forEach(value -> out.append(Lines.wrapped("  - ", 4, line(value))));
    }

    private static String line(CatalogueValue value) {
        String symbol = value.getSymbol() == null ? "" : value.getSymbol() + " = ";
        return value.getName() + ": " + symbol + value.getValue() + " " + CheckText.cited(value.getSource());
    }

    /** What to say when something asked for by name is not there. */
    public static String unknown(String what, String name, List<String> known) {
        String near = Nearest.to(name, known);
        return "There is no " + what + " named " + Lines.visible(name) + ".\n"
                + (near.isEmpty()
                        ? Lines.wrapped("", 0, "There are: " + String.join(", ", known) + ".")
                        : "Did you mean " + near + "?\n");
    }
}
