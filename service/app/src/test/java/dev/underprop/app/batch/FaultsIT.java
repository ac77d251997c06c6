package dev.underprop.app.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What happens to programs in the field, done to the real jar; the whole list is in {@code .ci/faults}. */
class FaultsIT {
    private static final int PLANS = 600;

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void plans() throws IOException {
        Files.write(folder.resolve("plans.ndjson"), SmallPlans.lines(PLANS));
    }

    /** A file may grow to 50 blocks of 512 or 1024 bytes; past that a write fails as on a full disk. */
    @Test
    void onAFullDiskNoHalfReportIsLeft() throws IOException, InterruptedException {
        Ended ended = shell(
                "ulimit -f 50; exec \"$@\" --text sum --report ndjson:a.ndjson --report html:b.html --report sarif:c.sarif");

        assertThat(ended.status()).as(ended.err()).isEqualTo(2);
        assertThat(ended.err())
                .startsWith("underprop check: the report was not written: ")
                .hasLineCount(1);
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.map(path -> path.getFileName().toString()).filter(name -> name.contains(".part")))
                    .isEmpty();
        }
    }

    /** A pipe that was there before is written to, and is still a pipe afterwards. */
    @Test
    void pipeIsWrittenToAndStays() throws IOException, InterruptedException {
        Ended ended = shell("mkfifo pipe; wc -l <pipe >count & \"$@\" --text sum --report ndjson:pipe; s=$?;"
                + " wait; test -p pipe || exit 9; exit $s");

        assertThat(ended.status()).as(ended.err()).isEqualTo(2);
        assertThat(Files.readString(folder.resolve("count")).strip()).isEqualTo(Integer.toString(PLANS + 1));
    }

    @Test
    void readerThatGoesAwayEndsTheRun() throws IOException, InterruptedException {
        Process process = start("exec \"$@\" --report ndjson");
        try (BufferedReader out = process.inputReader(StandardCharsets.UTF_8)) {
            assertThat(out.readLine()).startsWith("{");
        }
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(err).isEqualTo(2);
        assertThat(err).contains("the report was not written: ").doesNotContain("\tat ");
    }

    private record Ended(int status, String err) {}

    private Ended shell(String script) throws IOException, InterruptedException {
        Process process = start(script + " >out.txt");
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        return new Ended(process.exitValue(), err.replaceAll("(?m)^Picked up .*\\R", ""));
    }

    /** Runs a line of the shell in the folder, {@code "$@"} being the check of the plans. */
    private Process start(String script) throws IOException {
        List<String> command = new ArrayList<>(List.of("sh", "-c", script, "sh"));
        command.addAll(Run.command(Run.JAR, "check", "plans.ndjson"));
        return new ProcessBuilder(command).directory(folder.toFile()).start();
    }
}
