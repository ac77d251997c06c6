package dev.underprop.app;

import dev.underprop.app.batch.Batch;
import dev.underprop.wire.Version;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Starts the program. */
@Command(
        name = "underprop",
        description = "Checks the temporary support of a house floor.",
        footer = {
            "",
            "Exit status of check:",
            "  0  all plans are adequate",
            "  1  some plan is inadequate, incomplete or unstable",
            "  2  the job could not be done; wins over 1",
            "Exit status of lift:",
            "  0  the lift is planned, and everything was checked",
            "  1  it is impossible, short, unstable or not fully checked",
            "  2  the job could not be done",
            "",
            "A calculation aid. The local building code and a licensed engineer decide."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Main.Versions.class)
public final class Main implements Runnable {
    private static final List<Class<?>> COMMANDS = List.of(
            ServeCommand.class,
            TokenCommand.class,
            CheckCommand.class,
            PadsCommand.class,
            LiftCommand.class,
            ExplainCommand.class,
            CatalogueCommand.class,
            HealthCommand.class);

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private Main() {}

    /**
     * Runs one command and ends the process with its exit status.
     *
     * @param args command and options
     */
    public static void main(String[] args) {
        System.exit(run(args));
    }

    /** Runs one command and returns its exit status: 0, 1 or 2. */
    static int run(String... args) {
        CommandLine line = new CommandLine(new Main());
        commands(args).forEach(line::addSubcommand);
        return line.setExecutionExceptionHandler((failure, failing, parsed) -> failed(failure, failing.getErr()))
                .execute(args);
    }

    /**
     * The command that is named first, or all where none is: what belongs to the others costs a tenth of a second to read. It is made
     * before its options are read, so that it may begin.
     */
    private static List<?> commands(String... args) {
        return COMMANDS.stream()
                .filter(type -> args.length > 0 && name(type).equals(args[0]))
                .findFirst()
                .<List<?>>map(type -> List.of(made(type)))
                .orElse(COMMANDS);
    }

    private static Object made(Class<?> command) {
        try {
            return CommandLine.defaultFactory().create(command);
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static String name(Class<?> command) {
        return command.getAnnotation(Command.class).name();
    }

    /** No command is a wrong use. */
    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "A command is missing.");
    }

    private static int failed(Exception failure, PrintWriter err) {
        Batch.reportDefect(failure, err);
        return Batch.NOT_DONE;
    }

    /** The version that the build has written. */
    static final class Versions implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {Version.text()};
        }
    }
}
