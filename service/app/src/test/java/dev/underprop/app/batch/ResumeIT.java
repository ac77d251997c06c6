package dev.underprop.app.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs that are broken off or stopped, in processes of their own. */
class ResumeIT {
    private static final int PLANS = 1500;
    private static final List<String> KINDS =
            List.of("ndjson", "json", "csv", "junit", "sarif", "html", "markdown", "text");

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void plans() throws IOException {
        Files.write(folder.resolve("plans.ndjson"), SmallPlans.lines(PLANS));
    }

    @Test
    void killedInTheMiddleAndGoneOnIsTheSameAsUnbroken() throws IOException, InterruptedException {
        run("unbroken", List.of());
        Process process = start("resumed", List.of("--resume", "journal"));
        long kept = killedOnceTheJournalHolds(process, 20_000);

        Run resumed = run("resumed", List.of("--resume", "journal"));

        assertThat(kept).as("bytes of the journal when it was killed").isPositive();
        assertThat(resumed.status()).isEqualTo(2);
        for (String kind : KINDS) {
            assertThat(folder.resolve("resumed." + kind))
                    .as(kind)
                    .isNotEmptyFile()
                    .hasSameBinaryContentAs(folder.resolve("unbroken." + kind));
        }
    }

    @Test
    void journalSparesTheWorkAndKnowsAnotherInput() throws IOException {
        run("first", List.of("--resume", "journal"));
        byte[] whole = Files.readAllBytes(folder.resolve("journal"));
        long start = System.nanoTime();
        run("again", List.of("--resume", "journal"));
        long again = System.nanoTime() - start;
        assertThat(folder.resolve("journal")).as("nothing to be added").hasBinaryContent(whole);
        assertThat(folder.resolve("again.ndjson")).hasSameBinaryContentAs(folder.resolve("first.ndjson"));

        List<String> lines = SmallPlans.lines(PLANS);
        lines.set(700, SmallPlans.json("changed", 33));
        Files.write(folder.resolve("plans.ndjson"), lines);
        run("changed", List.of("--resume", "journal"));
        run("fresh", List.of());

        assertThat(folder.resolve("changed.ndjson")).hasSameBinaryContentAs(folder.resolve("fresh.ndjson"));
        assertThat(TimeUnit.NANOSECONDS.toSeconds(again)).isLessThan(60);
    }

    @Test
    void tornJournalIsCutOffWhereItIsWhole() throws IOException {
        run("first", List.of("--resume", "journal"));
        byte[] whole = Files.readAllBytes(folder.resolve("journal"));
        byte[] torn = Arrays.copyOf(whole, whole.length * 2 / 3);
        torn[torn.length - 100] ^= 1;
        Files.write(folder.resolve("journal"), torn);

        run("again", List.of("--resume", "journal"));

        assertThat(folder.resolve("journal")).hasBinaryContent(whole);
        assertThat(folder.resolve("again.ndjson")).hasSameBinaryContentAs(folder.resolve("first.ndjson"));
    }

    @Test
    void journalOfOtherOptionsIsRefused() throws IOException {
        Files.write(folder.resolve("plans.ndjson"), SmallPlans.lines(3));
        run("first", List.of("--resume", "journal"));

        Run other = run("other", List.of("--resume", "journal", "--units", "si"));

        assertThat(other.status()).isEqualTo(2);
        assertThat(other.err()).contains("the journal journal cannot be used: it belongs to a run of another version");
    }

    @Test
    void interruptFinishesWhatIsInFlightAndIs130() throws IOException, InterruptedException {
        Process process = start("stopped", List.of("--resume", "journal"));
        waitForJournal(process, 20_000);
        assertThat(new ProcessBuilder("kill", "-INT", Long.toString(process.pid()))
                        .start()
                        .waitFor())
                .isZero();
        assertThat(process.waitFor(90, TimeUnit.SECONDS)).isTrue();

        assertThat(process.exitValue()).isEqualTo(130);
        List<String> stopped = Files.readAllLines(folder.resolve("stopped.ndjson"));
        assertThat(stopped.get(stopped.size() - 1)).endsWith("\"complete\":false}");
        assertThat(folder.resolve("stopped.sarif")).as("half a report is none").doesNotExist();
        assertThat(folder).isDirectoryNotContaining("glob:**.part");

        run("stopped", List.of("--resume", "journal"));
        run("unbroken", List.of());
        assertThat(folder.resolve("stopped.ndjson")).hasSameBinaryContentAs(folder.resolve("unbroken.ndjson"));
        assertThat(Files.readAllLines(folder.resolve("unbroken.ndjson")).subList(0, stopped.size() - 1))
                .isEqualTo(stopped.subList(0, stopped.size() - 1));
    }

    private long killedOnceTheJournalHolds(Process process, long bytes) throws IOException, InterruptedException {
        waitForJournal(process, bytes);
        process.destroyForcibly().waitFor();
        assertThat(folder.resolve("resumed.ndjson"))
                .as("it was killed before its end")
                .doesNotExist();
        return Files.size(folder.resolve("journal"));
    }

    private void waitForJournal(Process process, long bytes) throws IOException, InterruptedException {
        Path journal = folder.resolve("journal");
        while (!Files.exists(journal) || Files.size(journal) < bytes) {
            assertThat(process.isAlive()).as("still running").isTrue();
            Thread.sleep(5);
        }
    }

    private Run run(String name, List<String> options) {
        return Run.in(folder, command(name, options).toArray(new String[0]));
    }

    /** Signals are as at a terminal, whatever they are in the shell that runs the tests. */
    private Process start(String name, List<String> options) throws IOException {
        List<String> command = new ArrayList<>(List.of("env", "--default-signal=INT"));
        command.addAll(Run.command(Run.JAR, command(name, options).toArray(new String[0])));
        return new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static List<String> command(String name, List<String> options) {
        List<String> command = new ArrayList<>(List.of("check", "plans.ndjson", "--text", "sum", "--detail", "brief"));
        for (String kind : KINDS) {
            command.addAll(List.of("--report", kind + ":" + name + "." + kind));
        }
        command.addAll(options);
        return command;
    }
}
