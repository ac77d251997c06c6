package dev.underprop.app;

import dev.underprop.app.batch.Batch;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.quantity.UnitSystem;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks the plans in files and folders. */
@Command(
        name = "check",
        description = "Checks job plans: files, and folders with all that is below them.",
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    private static final String JSON = "json:";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "1..*",
            paramLabel = "PATH",
            description = "Files and folders; plans end in .yaml, .yml or .json.")
    private List<String> paths = List.of();

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
            names = "--working",
            description = "Tells how each check is worked out, line by line, for a reviewer to follow.")
    private boolean working;

    @Option(
            names = "--report",
            paramLabel = "json:FILE",
            description =
                    "Writes a record for every plan; FILE - is the standard output, and people's text goes to the error output.")
    private String report = "";

    @Override
    public Integer call() {
        if (!report.isEmpty() && (!report.startsWith(JSON) || report.length() == JSON.length())) {
            throw new ParameterException(
                    spec.commandLine(), "A report is written as json:FILE, not as " + report + ".");
        }
        String file = report.isEmpty() ? "" : report.substring(JSON.length());
        return new Batch(new AnswerOptions(units, detail, working), file).run(paths);
    }
}
