package dev.underprop.app;

import dev.underprop.api.model.CatalogueEntry;
import dev.underprop.api.model.CataloguePage;
import dev.underprop.app.batch.Batch;
import dev.underprop.app.report.CatalogueText;
import dev.underprop.wire.catalogue.Parts;
import dev.underprop.wire.catalogue.Wanted;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the parts of the catalogue, or the entries of one. */
@Command(
        name = "catalogue",
        description = "Shows sizes, materials, soils and loads, each value with its source.",
        mixinStandardHelpOptions = true)
final class CatalogueCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "PART",
            arity = "0..1",
            defaultValue = "",
            description = "Part of the catalogue, such as soils; all parts are listed when it is left out.")
    private String part = "";

    @Option(
            names = "--filter",
            paramLabel = "WORDS",
            defaultValue = "",
            description = "Only entries that hold these words.")
    private String words = "";

    @Option(names = "--table", paramLabel = "TABLE", defaultValue = "", description = "Only entries of this table.")
    private String table = "";

    @Override
    public Integer call() {
        Parts parts = Parts.standard();
        if (part.isEmpty()) {
            return words.isEmpty() && table.isEmpty()
                    ? printed(CatalogueText.of(parts.index()))
                    : refused("--filter and --table want a PART.\n");
        }
        if (!parts.names().contains(part)) {
            return refused(CatalogueText.unknown("part of the catalogue", part, parts.names()));
        }
        if (!table.isEmpty() && !parts.tables(part).contains(table)) {
            return refused(CatalogueText.unknown("table of " + part, table, parts.tables(part)));
        }
        List<CatalogueEntry> found = entries(parts);
        return found.isEmpty()
                ? refused("No entry of " + part + " holds these words.\n")
                : printed(CatalogueText.of(found));
    }

    private List<CatalogueEntry> entries(Parts parts) {
        List<CatalogueEntry> all = new ArrayList<>();
        Integer next = 0;
        while (next != null) {
            CataloguePage page = parts.page(part, new Wanted(words, table, Wanted.MOST, next))
                    .orElseThrow();
            all.addAll(page.getEntries());
            next = page.getNext();
        }
        return all;
    }

    private int printed(String text) {
        write(spec.commandLine().getOut(), text);
        return 0;
    }

    private int refused(String text) {
        write(spec.commandLine().getErr(), text);
        return Batch.NOT_DONE;
    }

    private static void write(PrintWriter to, String text) {
        to.print(text);
        to.flush();
    }
}
