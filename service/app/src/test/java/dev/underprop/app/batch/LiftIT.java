package dev.underprop.app.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LiftIT {

    @ParameterizedTest
    @CsvSource({
        "demo/lift-together.yaml, 0",
        "demo/lift-alone.yaml, 1",
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
        Run run = Run.of("lift", "demo/lift-together.yaml", "--json");
        JsonNode plan = new ObjectMapper().readTree(run.out());

        assertThat(run.err()).isEmpty();
        assertThat(plan.get("outcome").asText()).isEqualTo("PLANNED");
    }

    @Test
    void faultsAreShownAtTheirPlace() {
        Run run = Run.of("lift", "demo/two-spans.yaml");

        assertThat(run.out()).contains("/lift  (member-missing)");
    }
}
