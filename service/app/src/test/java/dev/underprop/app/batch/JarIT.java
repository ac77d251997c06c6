package dev.underprop.app.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.app.Demos;
import dev.underprop.app.http.RunningService;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The other commands of the real jar, and its report against the service. */
@ExtendWith(RunningService.class)
class JarIT {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder = Path.of("");

    @Test
    void versionIsToldAlone() {
        Run run = Run.of("--version");

        assertThat(run.status()).isZero();
        assertThat(run.out()).matches("underprop [0-9]+\\.[0-9]+\\.[0-9]+\\R");
    }

    @Test
    void checkIsExplained() {
        Run run = Run.of("explain", "beam-bending");

        assertThat(run.status()).isZero();
        assertThat(run.out())
                .contains("(beam-bending)")
                .contains("Demand")
                .contains("Capacity")
                .contains("What helps")
                .contains("NDS");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void unknownCheckNamesTheNearest() {
        Run run = Run.of("explain", "beam-bendin");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("There is no check with the id beam-bendin.")
                .contains("Did you mean beam-bending?");
    }

    @Test
    void healthAsksTheService() {
        assertThat(Run.of("health", "--url", RunningService.address()).status()).isZero();
        assertThat(Run.of("health", "--url", "http://127.0.0.1:1").status()).isEqualTo(1);
    }

    @Test
    void reportHasTheNumbersOfBothEndpoints() throws IOException, InterruptedException {
        Path report = folder.resolve("report.json");
        Run.of("check", "demo/reference.yaml", "demo/old-floor.yaml", "--report", "json:" + report);

        for (JsonNode record : JSON.readTree(report.toFile())) {
            String plan = Files.readString(Path.of(record.get("path").asText()));
            JsonNode check = ask("/v1/plan-checks", plan);
            JsonNode analysis = ask("/v1/layout-analyses", plan);

            assertThat(record.get("result")).isEqualTo(check);
            assertThat(record.get("result").get("checks")).isEqualTo(analysis.get("checks"));
            assertThat(check.get("situations").size()).isPositive();
            for (int i = 0; i < check.get("situations").size(); i++) {
                String posts = "/situations/" + i + "/posts";
                assertThat(check.at(posts).size()).isPositive();
                assertThat(record.get("result").at(posts)).isEqualTo(analysis.at(posts));
            }
        }
    }

    @Test
    void demosAreOnTheClassPath() {
        for (String demo : Demos.valid()) {
            assertThat(JarIT.class.getResource("/demo/" + demo)).as(demo).isNotNull();
        }
    }

    private static JsonNode ask(String path, String plan) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(RunningService.address() + path))
                .header("Content-Type", "application/yaml")
                .POST(HttpRequest.BodyPublishers.ofString(plan))
                .build();
        HttpResponse<byte[]> answer = HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray());
        assertThat(answer.statusCode()).isEqualTo(200);
        return JSON.readTree(answer.body());
    }
}
