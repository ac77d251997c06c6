package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.underprop.api.model.Problem;
import dev.underprop.app.Demos;
import dev.underprop.client.ApiClient;
import dev.underprop.client.ApiException;
import dev.underprop.client.ChecksApi;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A service with tokens answers plans to those who show one, and says what it is to everybody. */
class AccessHttpTest {
    private static final String TOKEN = TokenLine.newToken();
    private static Service service;

    @BeforeAll
    static void startWithTokens() {
        Entrance entrance = new Entrance(Optional.of(TokenFiles.file(TOKEN)), Optional.empty());
        service = Service.start(Settings.at("127.0.0.1", 0).with(entrance));
    }

    @AfterAll
    static void stop() {
        service.close();
    }

    private static RequestSpecification client() {
        return Client.to(service.port(), true);
    }

    private static Response check(RequestSpecification request) {
        return request.contentType("application/yaml")
                .body(Demos.text("two-spans.yaml").getBytes(StandardCharsets.UTF_8))
                .post("/v1/plan-checks");
    }

    private static void assertRefused(Response answer) {
        assertThat(answer.statusCode()).isEqualTo(401);
        assertThat(answer.jsonPath().getString("type")).isEqualTo("/problems/unauthorized");
        assertThat(answer.header("WWW-Authenticate")).startsWith("Bearer realm=\"underprop\"");
    }

    @Test
    void plansAreAnsweredToThoseWhoShowAToken() {
        Response answer = check(client().header("Authorization", "Bearer " + TOKEN));

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(check(client().header("Authorization", "bearer  " + TOKEN)).statusCode())
                .isEqualTo(200);
    }

    @Test
    void generatedClientShowsATokenByAnInterceptor() throws ApiException {
        ApiClient client = new ApiClient();
        client.updateBaseUri("http://127.0.0.1:" + service.port());
        ChecksApi checks = new ChecksApi(client);

        assertThatThrownBy(checks::listChecks)
                .isInstanceOfSatisfying(
                        ApiException.class,
                        refused -> assertThat(refused.problem())
                                .get()
                                .extracting(Problem::getStatus)
                                .isEqualTo(401));
        client.setRequestInterceptor(request -> request.header("Authorization", "Bearer " + TOKEN));
        assertThat(new ChecksApi(client).listChecks().getChecks()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "GET /v1/checks",
                "HEAD /v1/checks",
                "GET /v1/checks/beam-bending",
                "GET /v1/catalogue",
                "GET /v1/catalogue/soils",
                "GET /metrics",
                "POST /v1/layout-analyses",
                "POST /v1/plan-checks",
                "POST /v1/plan-check-batches",
                "POST /v1/pad-sizings",
                "POST /v1/lift-plans"
            })
    void guardedAddressWantsAToken(String request) {
        List<String> parts = List.of(request.split(" "));

        Response answer = client().request(parts.get(0), parts.get(1));

        assertThat(answer.statusCode()).isEqualTo(401);
        assertThat(answer.header("WWW-Authenticate")).isEqualTo("Bearer realm=\"underprop\"");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/docs",
                "/pages/front.js",
                "/openapi.yaml",
                "/problems/unauthorized",
                "/health/live",
                "/health/ready"
            })
    void othersAreOpen(String path) {
        assertThat(client().get(path).statusCode()).isEqualTo(200);
    }

    @Test
    void guardedAndOpenAddressesAreAllThereAre() {
        List<String> open =
                List.of("/", "/docs", "/pages/", "/openapi.yaml", "/problems/", "/health/live", "/health/ready");

        service.router().allHttpHandlers().stream()
                .map(entry -> entry.endpoint)
                .filter(endpoint -> !open.contains(endpoint.path.replaceAll("\\{.*", "")))
                .forEach(endpoint -> assertThat(
                                client().request(endpoint.method.name(), endpoint.path.replaceAll("\\{[a-z]*}", "x"))
                                        .statusCode())
                        .as(endpoint.path)
                        .isEqualTo(401));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Basic dXNlcjpwYXNz",
                "Bearer",
                "Bearer ",
                "Bearer a b",
                "Bearer underprop_",
                "Bearer \"x\"",
                "x",
                "Bearer ../../etc/passwd"
            })
    void whatIsNoKnownTokenIsRefused(String header) {
        assertRefused(check(client().header("Authorization", header)));
    }

    @Test
    void unknownTokenIsSaidToBeSo() {
        Response answer = check(client().header("Authorization", "Bearer " + TokenLine.newToken()));

        assertRefused(answer);
        assertThat(answer.header("WWW-Authenticate")).endsWith("error=\"invalid_token\"");
    }

    @Test
    void tokenShownTwiceIsRefused() {
        assertRefused(
                check(client().header("Authorization", "Bearer " + TOKEN).header("Authorization", "Bearer " + TOKEN)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "GET //metrics HTTP/1.1",
                "GET /./metrics HTTP/1.1",
                "GET /pages/../metrics HTTP/1.1",
                "GET /pages/%2e%2e/metrics HTTP/1.1",
                "GET /health/live/../../metrics HTTP/1.1",
                "GET /metrics;a=b HTTP/1.1",
                "GET /%6detrics HTTP/1.1",
                "GET http://localhost/metrics HTTP/1.1",
                "GET /pages/..%2fmetrics HTTP/1.1"
            })
    void noWayOfWritingAnAddressGoesPastTheToken(String line) throws IOException {
        try (Wire wire = new Wire(service.port())) {
            String answer = wire.send(line + "\r\nHost: localhost\r\nConnection: close\r\n\r\n")
                    .answer();
            assertThat(answer).doesNotStartWith("HTTP/1.1 2").doesNotContain("underprop_requests");
        }
    }

    @Test
    void refusalComesBeforeTheBodyIsRead() throws IOException {
        try (Wire wire = new Wire(service.port())) {
            String answer = wire.send("POST /v1/plan-checks HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
                            + "Content-Type: application/yaml\r\nContent-Length: 100000\r\n\r\n")
                    .answer();
            assertThat(answer).startsWith("HTTP/1.1 401 ");
        }
    }
}
