package dev.underprop.client;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The bodies are UTF-8 whatever the charset of the platform, which this module's tests set to US-ASCII. */
class CharsetTest {
    private static final String TITLE = "6\u2032 \u2248 1.83 m";

    private final HttpServer server = listen();

    @BeforeEach
    void start() {
        byte[] body = ("{\"type\":\"/problems/stopping\",\"status\":503,\"title\":\"" + TITLE + "\"}")
                .getBytes(StandardCharsets.UTF_8);
        server.createContext("/", exchange -> {
            exchange.getResponseHeaders().add("Content-Type", "application/problem+json");
            exchange.sendResponseHeaders(503, body.length);
            exchange.getResponseBody().write(body);
            exchange.close();
        });
        answer("/openapi.yaml", "application/yaml", TITLE);
        answer("/problems/faulty", "text/plain; charset=utf-8", TITLE);
        server.start();
    }

    private void answer(String path, String type, String text) {
        byte[] body = text.getBytes(StandardCharsets.UTF_8);
        server.createContext(path, exchange -> {
            exchange.getResponseHeaders().add("Content-Type", type);
            exchange.sendResponseHeaders(200, body.length);
            exchange.getResponseBody().write(body);
            exchange.close();
        });
    }

    @AfterEach
    void stop() {
        server.stop(0);
    }

    @Test
    void problemKeepsItsLetters() {
        assertThatThrownBy(() -> new HealthApi(client()).healthLive())
                .isInstanceOfSatisfying(
                        ApiException.class, e -> assertThat(e.getResponseBody()).contains(TITLE));
    }

    @Test
    void textsArriveAsTheyWereSent() throws ApiException {
        ServiceApi service = new ServiceApi(client());

        assertThat(service.getContract(null)).isEqualTo(TITLE);
        assertThat(service.explainProblem("faulty")).isEqualTo(TITLE);
    }

    private ApiClient client() {
        ApiClient client = new ApiClient();
        client.updateBaseUri("http://localhost:" + server.getAddress().getPort());
        return client;
    }

    private static HttpServer listen() {
        try {
            return HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
