package dev.underprop.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.wire.fault.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JsonReportTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void isThereOnlyWhenComplete() throws IOException {
        Path file = folder.resolve("report.json");
        Files.writeString(file, "before");

        try (JsonReport report = JsonReport.to(file.toString())) {
            report.add(refused("a.yaml"));
            assertThat(file).hasContent("before");
            report.add(refused("b.yaml"));
            report.complete();
        }

        assertThat(new ObjectMapper().readTree(file.toFile()).findValuesAsText("path"))
                .containsExactly("a.yaml", "b.yaml");
        assertThat(Files.readString(file)).endsWith("}\n]\n");
        assertThat(folder).isDirectoryContaining("glob:**report.json").isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void isLeftAsItWasWhenNotComplete() throws IOException {
        Path file = folder.resolve("report.json");

        try (JsonReport report = JsonReport.to(file.toString())) {
            report.add(refused("a.yaml"));
        }

        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void withoutPlansIsAnEmptyList() throws IOException {
        Path file = folder.resolve("report.json");

        try (JsonReport report = JsonReport.to(file.toString())) {
            report.complete();
        }

        assertThat(file).hasContent("[]");
    }

    private static Outcome refused(String path) {
        return Outcome.refused(path, ProblemKind.FAULTY, "plan", List.of(Fault.of("x", "Wrong.", "")));
    }
}
