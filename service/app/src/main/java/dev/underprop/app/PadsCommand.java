package dev.underprop.app;

import dev.underprop.app.batch.PadSizings;
import dev.underprop.wire.door.AnswerOptions;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The request, ending in .yaml, .yml or .json.")
    private String file = "";

    @Mixin
    private AnswerFlags flags = new AnswerFlags();

    @Option(
            names = "--detail",
            defaultValue = "compact",
            paramLabel = "compact|full",
            converter = Choices.Details.class,
            description = "How much is told, ${DEFAULT-VALUE} unless given.")
    private AnswerOptions.Detail detail = AnswerOptions.Detail.COMPACT;

    @Override
    public Integer call() {
        return new PadSizings(new AnswerOptions(flags.units(), detail), flags.json(spec)).run(file);
    }
}
