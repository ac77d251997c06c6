package dev.underprop.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.record.Extent;
import dev.underprop.wire.record.Outcome;
import dev.underprop.wire.record.ProblemForm;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What any report does with its file. */
class ReportFilesTest {
    private static final ReportOptions OPTIONS = new ReportOptions(Extent.WHOLE, TextReport.Level.FULL, 10);

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(strings = {"text", "json", "ndjson", "csv"})
    void isThereOnlyWhenComplete(String kind) throws IOException {
        Path file = folder.resolve("report");
        Files.writeString(file, "before");

        try (Report report = open(kind, file)) {
            report.prepare(refused("a.yaml")).run();
            assertThat(file).hasContent("before");
            report.prepare(refused("b.yaml")).run();
            report.complete(new End(new Tally(), true, List.of()));
        }

        assertThat(Files.readString(file)).contains("a.yaml").contains("b.yaml").doesNotContain("before");
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @ParameterizedTest
    @ValueSource(strings = {"text", "json", "ndjson", "csv"})
    void isLeftAsItWasWhenNotComplete(String kind) {
        try (Report report = open(kind, folder.resolve("report"))) {
            report.prepare(refused("a.yaml")).run();
        }

        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void withoutPlansIsAnEmptyList() {
        Path file = folder.resolve("report.json");

        try (Report report = open("json", file)) {
            report.complete(new End(new Tally(), true, List.of()));
        }

        assertThat(file).hasContent("[]");
    }

    @Test
    void linesOfARunThatWasStoppedSaySo() throws IOException {
        Path file = folder.resolve("report.ndjson");

        try (Report report = open("ndjson", file)) {
            report.prepare(refused("a.yaml")).run();
            report.complete(new End(new Tally(), false, List.of()));
        }

        List<String> lines = Files.readAllLines(file);
        assertThat(lines).hasSize(2);
        JsonNode last = new ObjectMapper().readTree(lines.get(1));
        assertThat(last.get("complete").asBoolean(true)).isFalse();
        assertThat(last.at("/summary/plans").isInt()).isTrue();
    }

    private static Report open(String kind, Path file) {
        return new ReportChoice(kind, file.toString()).open(OPTIONS);
    }

    private static Judgement refused(String path) {
        return Judgement.of(Outcome.refused(
                EntryName.file(path), "", ProblemForm.FAULTY, "plan", List.of(Fault.of("x", "Wrong.", ""))));
    }
}
