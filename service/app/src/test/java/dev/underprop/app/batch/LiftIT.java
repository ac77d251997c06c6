package dev.underprop.app.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LiftIT {

    @ParameterizedTest
    @CsvSource({
        "demo/lift-together.yaml, 0",
        "demo/lift-alone.yaml, 1",
        "demo/lift-sinking-pad.yaml, 1",
        "demo/lift-hopeless.yaml, 1",
        "demo/two-spans.yaml, 2",
        "demo/gone.yaml, 2",
        "demo, 2"
    })
    void exitStatusIsTheOutcome(String path, int status) {
        assertThat(Run.of("lift", path).status()).isEqualTo(status);
    }

    @Test
    void jsonAloneOnTheStandardOutput() throws IOException {
        Run run = Run.of("lift", "demo/lift-together.yaml", "--report", "json");
        JsonNode record = new ObjectMapper().readTree(run.out()).get(0);

        assertThat(run.err()).contains("STOP RULES");
        assertThat(record.at("/path").asText()).isEqualTo("demo/lift-together.yaml");
        assertThat(record.at("/result/outcome").asText()).isEqualTo("PLANNED");
    }

    @Test
    void aRecordOfAFaultyPlanHoldsItsProblem(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("lift.json");
        Run run = Run.of("lift", "demo/two-spans.yaml", "--report", "json:" + file);

        assertThat(run.out()).contains("/lift  (member-missing)");
        assertThat(new ObjectMapper()
                        .readTree(file.toFile())
                        .at("/0/problem/errors/0/pointer")
                        .asText())
                .isEqualTo("/lift");
    }

    @ParameterizedTest
    @ValueSource(strings = {"junit", "json:", "xml:out.xml"})
    void noReportButJson(String report) {
        Run run = Run.of("lift", "demo/lift-together.yaml", "--report", report);

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("json:FILE");
    }

    @Test
    void faultsAreShownAtTheirPlace() {
        Run run = Run.of("lift", "demo/two-spans.yaml");

        assertThat(run.out()).contains("/lift  (member-missing)");
    }
}
