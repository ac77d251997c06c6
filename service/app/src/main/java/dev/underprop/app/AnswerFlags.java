package dev.underprop.app;

import dev.underprop.app.report.ReportChoice;
import dev.underprop.wire.quantity.UnitSystem;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** What all commands that judge plans take. */
final class AnswerFlags {
    private static final String JSON = "json";

    @Option(
            names = "--units",
            defaultValue = "us",
            paramLabel = "us|si",
            converter = Choices.Units.class,
            description = "Units of the results, ${DEFAULT-VALUE} unless given.")
    private UnitSystem units = UnitSystem.US;

    @Option(
            names = "--report",
            paramLabel = "KIND[:FILE]",
            description = {
                "Writes a report. KIND is json; check, which may be asked for several, has also text, ndjson, csv (a row a"
                        + " check), junit, sarif, markdown, html and baseline. Without FILE, or with -, it goes to the standard"
                        + " output, which one report can have; people's text then goes to the error output."
            })
    private List<String> reports = List.of();

    UnitSystem units() {
        return units;
    }

    /** Reports as they were asked for. */
    List<String> reports() {
        return reports;
    }

    /**
     * Where a command that has one report in JSON writes it: {@code -} for the standard output, empty where none is asked for.
     *
     * @throws ParameterException where anything else is asked for
     */
    String json(CommandSpec spec) {
        if (reports.isEmpty()) {
            return "";
        }
        if (reports.size() > 1) {
            throw new ParameterException(spec.commandLine(), "This command writes one report.");
        }
        try {
            ReportChoice choice = ReportChoice.of(reports.get(0));
            if (choice.kind().equals(JSON)) {
                return choice.file();
            }
        } catch (IllegalArgumentException e) {
            throw refused(spec, e);
        }
        throw refused(spec, new IllegalArgumentException(reports.get(0)));
    }

    private ParameterException refused(CommandSpec spec, IllegalArgumentException cause) {
        return new ParameterException(
                spec.commandLine(), "A report is written as json or json:FILE, not as " + reports.get(0) + ".", cause);
    }
}
