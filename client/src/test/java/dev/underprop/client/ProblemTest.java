package dev.underprop.client;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.net.httpserver.HttpServer;
import dev.underprop.api.model.HealthStatus;
import dev.underprop.api.model.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.http.HttpTimeoutException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Problems are what they are; what a later version of the service adds is no trouble; nobody waits for ever. */
class ProblemTest {
    private final HttpServer server = listen();
    private final ApiClient client = new ApiClient();

    @BeforeEach
    void start() {
        server.start();
        client.updateBaseUri("http://localhost:" + server.getAddress().getPort());
    }

    @AfterEach
    void stop() {
        server.stop(0);
    }

    @Test
    void problemIsTyped() {
        answer(
                503,
                "application/problem+json",
                "{\"type\":\"/problems/unavailable\",\"title\":\"Busy\",\"status\":503,\"later\":[1],"
                        + "\"errors\":[{\"pointer\":\"/floor\",\"code\":\"c\",\"detail\":\"d\",\"later\":true}]}");

        assertThatThrownBy(() -> new HealthApi(client).healthLive())
                .isInstanceOfSatisfying(ApiException.class, failure -> {
                    Problem problem = failure.problem().orElseThrow();
                    assertThat(problem.getTitle()).isEqualTo("Busy");
                    assertThat(problem.getErrors().get(0).getPointer()).isEqualTo("/floor");
                });
    }

    @Test
    void whatIsNoProblemIsNone() {
        answer(502, "text/html", "<h1>{\"title\":\"Bad gateway\"}</h1>");

        assertThatThrownBy(() -> new HealthApi(client).healthLive())
                .isInstanceOfSatisfying(
                        ApiException.class,
                        failure -> assertThat(failure.problem()).isEmpty());
    }

    @Test
    void brokenProblemIsNone() {
        answer(503, "application/problem+json", "{\"title\":");

        assertThatThrownBy(() -> new HealthApi(client).healthLive())
                .isInstanceOfSatisfying(ApiException.class, failure -> {
                    assertThat(failure.problem()).isEmpty();
                    assertThat(failure.getResponseBody()).isEqualTo("{\"title\":");
                });
    }

    @Test
    void laterMembersAndValuesAreTaken() throws ApiException {
        answer(200, "application/json", "{\"status\":\"HALF_UP\",\"later\":{},\"engine\":{\"name\":\"n\",\"x\":1}}");

        assertThat(new HealthApi(client).healthLive().getStatus()).isEqualTo(HealthStatus.UNKNOWN_DEFAULT_OPEN_API);
    }

    @Test
    void waitsHaveAnEnd() {
        assertThat(client.getReadTimeout()).isEqualTo(Duration.ofSeconds(90));
        assertThat(client.getHttpClient().connectTimeout()).contains(Duration.ofSeconds(10));
        assertThat(client.getHttpClient()).isSameAs(client.getHttpClient());

        server.createContext("/health/live", exchange -> {});
        client.setReadTimeout(Duration.ofMillis(200));
        assertThatThrownBy(() -> new HealthApi(client).healthLive())
                .isInstanceOf(ApiException.class)
                .hasCauseInstanceOf(HttpTimeoutException.class);
    }

    @Test
    void anotherConnectTimeoutIsTaken() {
        client.getHttpClient();
        client.setConnectTimeout(Duration.ofSeconds(1));

        assertThat(client.getHttpClient().connectTimeout()).contains(Duration.ofSeconds(1));
    }

    private void answer(int status, String type, String body) {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        server.createContext("/health/live", exchange -> {
            exchange.getResponseHeaders().add("Content-Type", type);
            exchange.sendResponseHeaders(status, bytes.length);
            exchange.getResponseBody().write(bytes);
            exchange.close();
        });
    }

    private static HttpServer listen() {
        try {
            return HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
