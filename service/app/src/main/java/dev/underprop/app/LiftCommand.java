package dev.underprop.app;

import dev.underprop.app.batch.LiftRun;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans the lift of one plan. */
@Command(
        name = "lift",
        description =
                "Plans the lift that a job plan asks for: stages, passes, turns, and what to read after each stage.",
        footer = {
            "",
            "Exit status:",
            "  0  planned, and everything was checked",
            "  1  impossible, short of its targets, unstable, or not everything was checked",
            "  2  the job could not be done"
        },
        mixinStandardHelpOptions = true)
final class LiftCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "PLAN", description = "The plan; it ends in .yaml, .yml or .json.")
    private String path = "";

    @Mixin
    private AnswerFlags flags = new AnswerFlags();

    @Override
    public Integer call() {
        return new LiftRun(flags.units(), flags.json(spec)).run(path);
    }
}
