package dev.underprop.app;

import dev.underprop.app.batch.LiftRun;
import dev.underprop.wire.quantity.UnitSystem;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plans the lift of one plan. */
@Command(
        name = "lift",
        description =
                "Plans the lift that a job plan asks for: stages, passes, turns, and what to read after each stage.",
        mixinStandardHelpOptions = true)
final class LiftCommand implements Callable<Integer> {

    @Parameters(paramLabel = "PLAN", description = "The plan; it ends in .yaml, .yml or .json.")
    private String path = "";

    @Option(
            names = "--units",
            defaultValue = "us",
            paramLabel = "us|si",
            converter = Choices.Units.class,
            description = "Units of the results, ${DEFAULT-VALUE} unless given.")
    private UnitSystem units = UnitSystem.US;

    @Option(names = "--json", description = "Writes the lift plan as JSON instead of words.")
    private boolean json;

    @Override
    public Integer call() {
        return new LiftRun(units, json).run(path);
    }
}
