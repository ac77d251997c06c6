package dev.underprop.app.http;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The real jar, serving in a process of its own on a free port. */
final class ServedJar implements AutoCloseable {
    private static final Pattern LISTENING = Pattern.compile("listening on (https?)://[^:]+:([0-9]+)/");
    private static final int PATIENCE_SECONDS = 60;

    private final Process process;
    private final List<String> err = new CopyOnWriteArrayList<>();
    private final Thread reader;

    ServedJar(Map<String, String> environment, String... options) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                Path.of("target", "underprop.jar").toAbsolutePath().toString(),
                "serve",
                "--port",
                "0"));
        command.addAll(List.of(options));
        ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD);
        builder.environment().putAll(environment);
        process = builder.start();
        reader = new Thread(this::read, "error output");
        reader.setDaemon(true);
        reader.start();
    }

    private void read() {
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8))) {
            lines.lines().forEach(err::add);
        } catch (IOException | java.io.UncheckedIOException e) {
            err.add("(cut off)");
        }
    }

    /** Where it listens, such as {@code https://127.0.0.1:4711}, as soon as it does. */
    String address() throws InterruptedException {
        long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (System.nanoTime() < deadline && process.isAlive()) {
            for (String line : err) {
                Matcher matcher = LISTENING.matcher(line);
                if (matcher.find()) {
                    return matcher.group(1) + "://localhost:" + matcher.group(2);
                }
            }
            Thread.sleep(50);
        }
        throw new AssertionError("not listening: " + err);
    }

    /** Its exit status, once it has ended by itself. */
    int status() throws InterruptedException {
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            throw new AssertionError("still running: " + err);
        }
        reader.join(TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS));
        return process.exitValue();
    }

    /** What it has written to the error output so far. */
    List<String> err() {
        return List.copyOf(err);
    }

    /** Tells it to stop, as a supervisor would, and goes on reading what it says: {@code Process.destroy} would not. */
    void stop() {
        process.toHandle().destroy();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
