package dev.underprop.app;

import dev.underprop.app.batch.PadSizings;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.quantity.UnitSystem;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Finds pads for the posts of a request. */
@Command(
        name = "pads",
        description =
                "Finds pads for posts: reads a request with a plan or loads, ground and stock, as POST /v1/pad-sizings does.",
        footer = {
            "",
            "Exit status:",
            "  0  a pad is found for every post, and every check of it passes",
            "  1  under some post none passes, or something was not checked",
            "  2  the job could not be done"
        },
        mixinStandardHelpOptions = true)
final class PadsCommand implements Callable<Integer> {
    private static final String JSON = "json:";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The request, ending in .yaml, .yml or .json.")
    private String file = "";

    @Option(
            names = "--units",
            defaultValue = "us",
            paramLabel = "us|si",
            converter = Choices.Units.class,
            description = "Units of the results, ${DEFAULT-VALUE} unless given.")
    private UnitSystem units = UnitSystem.US;

    @Option(
            names = "--detail",
            defaultValue = "compact",
            paramLabel = "compact|full",
            converter = Choices.Details.class,
            description = "How much is told, ${DEFAULT-VALUE} unless given.")
    private AnswerOptions.Detail detail = AnswerOptions.Detail.COMPACT;

    @Option(
            names = "--report",
            paramLabel = "json:FILE",
            description =
                    "Writes the record of the answer; FILE - is the standard output, and people's text goes to the error output.")
    private String report = "";

    @Override
    public Integer call() {
        if (!report.isEmpty() && (!report.startsWith(JSON) || report.length() == JSON.length())) {
            throw new ParameterException(
                    spec.commandLine(), "A report is written as json:FILE, not as " + report + ".");
        }
        String to = report.isEmpty() ? "" : report.substring(JSON.length());
        return new PadSizings(new AnswerOptions(units, detail), to).run(file);
    }
}
