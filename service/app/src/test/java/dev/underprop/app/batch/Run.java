package dev.underprop.app.batch;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * What a run of the jar in a process of its own left behind.
 *
 * @param status exit status
 * @param out standard output
 * @param err error output
 */
record Run(int status, String out, String err) {
    static final Path JAR = Path.of("target", "underprop.jar");

    /** Runs the jar in the module's folder. */
    static Run of(String... arguments) {
        return in(Path.of(""), arguments);
    }

    /** Runs the jar in a folder. */
    static Run in(Path folder, String... arguments) {
        return jar(JAR, folder, arguments);
    }

    /** Runs another jar in a folder. */
    static Run jar(Path jar, Path folder, String... arguments) {
        List<String> command = command(jar, arguments);
        try {
            Path out = Files.createTempFile("out", ".txt");
            Path err = Files.createTempFile("err", ".txt");
            Process process = new ProcessBuilder(command)
                    .directory(folder.toAbsolutePath().toFile())
                    .redirectInput(ProcessBuilder.Redirect.from(new File("/dev/null")))
                    .redirectOutput(out.toFile())
                    .redirectError(err.toFile())
                    .start();
            if (!process.waitFor(120, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError("still running after two minutes: " + command);
            }
            Run run = new Run(process.exitValue(), text(out), text(err));
            Files.delete(out);
            Files.delete(err);
            return run;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** The command line that runs a jar. */
    static List<String> command(Path jar, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                jar.toAbsolutePath().toString()));
        command.addAll(List.of(arguments));
        return command;
    }

    private static String text(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }
}
