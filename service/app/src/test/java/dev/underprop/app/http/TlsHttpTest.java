package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.underprop.app.Demos;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLParameters;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** With a certificate the service speaks TLS 1.2 and 1.3, and nothing else. */
class TlsHttpTest {
    @TempDir
    private static Path folder = Path.of("");

    private static Service service;
    private static SSLContext trusting;

    @BeforeAll
    static void startWithACertificate() throws Exception {
        Path keystore = Keystores.make(folder);
        trusting = Keystores.trusting(keystore);
        Entrance entrance = new Entrance(Optional.empty(), Optional.of(new Entrance.Tls(keystore, Keystores.PASSWORD)));
        service = Service.start(Settings.at("127.0.0.1", 0).with(entrance));
    }

    @AfterAll
    static void stop() {
        service.close();
    }

    private static HttpResponse<String> get(String path, String protocol) throws IOException, InterruptedException {
        SSLParameters parameters = new SSLParameters();
        parameters.setProtocols(new String[] {protocol});
        HttpClient client = HttpClient.newBuilder()
                .sslContext(trusting)
                .sslParameters(parameters)
                .build();
        return client.send(
                HttpRequest.newBuilder(URI.create("https://localhost:" + service.port() + path))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"TLSv1.2", "TLSv1.3"})
    void answersByTls(String protocol) throws IOException, InterruptedException {
        HttpResponse<String> answer = get("/health/ready", protocol);

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.sslSession().orElseThrow().getProtocol()).isEqualTo(protocol);
        assertThat(answer.headers().firstValue("Strict-Transport-Security")).contains("max-age=31536000");
    }

    @Test
    void problemsSayThatTlsIsToStayToo() throws IOException, InterruptedException {
        HttpResponse<String> answer = get("/nothing", "TLSv1.3");

        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.headers().firstValue("Strict-Transport-Security")).isPresent();
    }

    @Test
    void plansAreAnswered() throws IOException, InterruptedException {
        HttpClient client = HttpClient.newBuilder().sslContext(trusting).build();
        HttpResponse<String> answer = client.send(
                HttpRequest.newBuilder(URI.create("https://localhost:" + service.port() + "/v1/plan-checks"))
                        .header("Content-Type", "application/yaml")
                        .POST(HttpRequest.BodyPublishers.ofString(Demos.text("two-spans.yaml")))
                        .build(),
                HttpResponse.BodyHandlers.ofString());

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).contains("\"plan-check\"");
    }

    /** The server does not speak it; a Java of today does not either, unless told to. */
    @Test
    void olderTlsIsNotSpoken() {
        assertThatThrownBy(() -> get("/health/ready", "TLSv1.1")).isInstanceOf(IOException.class);
    }

    @Test
    void plainHttpIsNotAnswered() throws IOException {
        try (Wire wire = new Wire(service.port())) {
            String answer;
            try {
                answer = wire.send("GET /health/live HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n")
                        .answer();
            } catch (IOException e) {
                answer = "";
            }
            assertThat(answer).doesNotContain("HTTP/1.1 200").doesNotContain("UP");
        }
    }

    @Test
    void wrongPasswordStopsTheStartAndIsNotTold() throws GeneralSecurityException, IOException, InterruptedException {
        Path keystore = folder.resolve("keystore.p12");
        Entrance wrong = new Entrance(Optional.empty(), Optional.of(new Entrance.Tls(keystore, "not-the-secret")));

        assertThatThrownBy(() -> Service.start(Settings.at("127.0.0.1", 0).with(wrong)))
                .satisfies(failure -> {
                    for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
                        assertThat(String.valueOf(cause.getMessage())).doesNotContain("not-the-secret");
                    }
                });
        assertThat(wrong.toString()).doesNotContain("not-the-secret");
    }

    @Test
    void hstsIsForTlsAlone() {
        try (Service plain = Service.start(Settings.at("127.0.0.1", 0))) {
            assertThat(Client.to(plain.port(), false).get("/health/live").header("Strict-Transport-Security"))
                    .isNull();
        }
    }
}
