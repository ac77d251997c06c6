package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.app.Demos;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the service counts of itself. */
class MetricsHttpTest {
    private static Service service;

    @BeforeAll
    static void start() {
        service = Service.start(Settings.at("127.0.0.1", 0));
    }

    @AfterAll
    static void stop() {
        service.close();
    }

    private static Response post(String path, String plan) {
        return Client.to(service.port(), true)
                .contentType("application/yaml")
                .body(plan.getBytes(StandardCharsets.UTF_8))
                .post(path);
    }

    private static List<String> metrics() {
        Response answer = Client.to(service.port(), false).get("/metrics");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.contentType()).isEqualTo("text/plain; version=0.0.4; charset=utf-8");
        return answer.asString().lines().toList();
    }

    private static double value(String name) {
        return metrics().stream()
                .filter(line -> line.startsWith(name + " "))
                .mapToDouble(line -> Double.parseDouble(line.substring(name.length() + 1)))
                .findFirst()
                .orElse(0);
    }

    private static String count(String route, String method, int status) {
        return "underprop_requests_seconds_count{method=\"" + method + "\",route=\"" + route + "\",status=\"" + status
                + "\"}";
    }

    @Test
    void requestsAreCountedByTemplateMethodAndStatus() throws InterruptedException {
        Client.to(service.port(), true).get("/v1/checks/beam-bending");
        Client.to(service.port(), true).get("/v1/checks/no-such-one");
        Client.to(service.port(), true).get("/nothing/here");

        awaitCount(count("/v1/checks/{id}", "GET", 200));
        awaitCount(count("/v1/checks/{id}", "GET", 404));
        awaitCount(count("-", "GET", 404));
    }

    /** An answer is counted when it is written, which may be after it was read. */
    private static void awaitCount(String name) throws InterruptedException {
        for (int i = 0; i < 100 && value(name) == 0; i++) {
            Thread.sleep(20);
        }
        assertThat(value(name)).as(name).isPositive();
    }

    @Test
    void verdictsStatesAndStagesAreCounted() throws InterruptedException {
        double states = value("underprop_contact_states_total");

        assertThat(post("/v1/plan-checks", Demos.text("two-spans.yaml")).statusCode())
                .isEqualTo(200);

        assertThat(value("underprop_verdicts_total{question=\"plan-check\",verdict=\"incomplete\"}"))
                .isPositive();
        assertThat(value("underprop_contact_states_total")).isGreaterThan(states);
        for (String stage : List.of("parse", "solve", "write")) {
            awaitCount("underprop_stages_seconds_count{stage=\"" + stage + "\"}");
        }
    }

    @Test
    void whatRunsAndHowFullItIsAreTold() {
        assertThat(metrics())
                .anyMatch(line -> line.startsWith("underprop_build_info{")
                        && line.contains("version=\"")
                        && line.contains("commit=\"")
                        && line.contains("java=\""))
                .anyMatch(line -> line.equals("underprop_analyses_waiting 0.0"))
                .anyMatch(line -> line.equals("underprop_analyses_waiting_limit 32.0"))
                .anyMatch(line -> line.equals("underprop_analyses_refused_total{reason=\"too-slow\"} 0.0"))
                .anyMatch(line -> line.startsWith("jvm_memory_used_bytes{"))
                .anyMatch(line -> line.startsWith("jvm_threads_live_threads "))
                .anyMatch(line -> line.startsWith("process_uptime_seconds "));
    }

    /** Whatever clients send, there are no more series than routes, methods and statuses. */
    @Test
    void nothingThatIsSentBecomesALabel() throws IOException {
        try (Wire wire = new Wire(service.port())) {
            wire.send("SECRETMETHOD /v1/checks/secret-path?secret=query HTTP/1.1\r\nHost: secret-host\r\n"
                            + "X-Request-Id: secret-id\r\nConnection: close\r\n\r\n")
                    .answer();
        }
        post("/v1/plan-checks", "id: secret-plan");

        assertThat(metrics())
                .noneMatch(line -> line.toLowerCase(java.util.Locale.ROOT).contains("secret"));
    }

    @Test
    void answersTellHowLongTheirStagesTook() {
        Response answer = post("/v1/layout-analyses", Demos.text("two-spans.yaml"));

        assertThat(answer.header("Server-Timing"))
                .matches("parse;dur=[0-9]+\\.[0-9]{3}, solve;dur=[0-9]+\\.[0-9]{3}, write;dur=[0-9]+\\.[0-9]{3}");
        assertThat(post("/v1/pad-sizings", "{}").header("Server-Timing")).isNull();
    }
}
