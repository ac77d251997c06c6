package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.underprop.app.Demos;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How the real jar is run for others: who is let in, over what, and what it refuses to do. */
class ServeIT {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder = Path.of("");

    private static HttpRequest.Builder to(String address) {
        return HttpRequest.newBuilder(URI.create(address));
    }

    private static HttpResponse<String> send(HttpClient client, HttpRequest.Builder request)
            throws IOException, InterruptedException {
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static HttpRequest.Builder check(String address) {
        return to(address + "/v1/plan-checks")
                .header("Content-Type", "application/yaml")
                .POST(HttpRequest.BodyPublishers.ofString(Demos.text("two-spans.yaml")));
    }

    private int refused(List<String> words, String... options) throws IOException, InterruptedException {
        try (ServedJar jar = new ServedJar(Map.of(), options)) {
            int status = jar.status();
            assertThat(String.join("\n", jar.err())).contains(words);
            return status;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.0.0.0", "::"})
    void addressThatOthersReachWantsTokensOrAPlainWord(String host) throws IOException, InterruptedException {
        assertThat(refused(List.of("Others reach this address", "--let-anyone-in-without-token"), "--host", host))
                .isEqualTo(2);
    }

    @Test
    void plainWordLetsAnyoneInAndIsSaid() throws IOException, InterruptedException {
        try (ServedJar jar = new ServedJar(Map.of(), "--host", "0.0.0.0", "--let-anyone-in-without-token")) {
            assertThat(send(HttpClient.newHttpClient(), to(jar.address() + "/v1/checks"))
                            .statusCode())
                    .isEqualTo(200);
            assertThat(jar.err())
                    .anyMatch(line -> line.contains("whoever reaches this address may ask"))
                    .anyMatch(line -> line.contains("can be read on the way"));
        }
    }

    @Test
    void tokenMadeByTheJarLetsIn() throws IOException, InterruptedException {
        Path tokens = folder.resolve("tokens");
        Process maker = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-jar",
                        Path.of("target", "underprop.jar").toAbsolutePath().toString(),
                        "token",
                        "office")
                .redirectOutput(tokens.toFile())
                .redirectError(folder.resolve("token").toFile())
                .start();
        assertThat(maker.waitFor()).isZero();
        Files.setPosixFilePermissions(tokens, PosixFilePermissions.fromString("rw-------"));
        String token = Files.readString(folder.resolve("token")).strip();
        assertThat(Files.readString(tokens))
                .matches("office sha256:[0-9a-f]{64}\\R")
                .doesNotContain(token);

        try (ServedJar jar =
                new ServedJar(Map.of(), "--host", "0.0.0.0", "--tokens", tokens.toString(), "--log", "json")) {
            HttpClient client = HttpClient.newHttpClient();
            assertThat(send(client, check(jar.address())).statusCode()).isEqualTo(401);
            HttpResponse<String> answer = send(
                    client,
                    check(jar.address())
                            .header("Authorization", "Bearer " + token)
                            .header("X-Request-Id", "mine-1"));
            assertThat(answer.statusCode()).isEqualTo(200);
            jar.stop();
            jar.status();
            assertLog(jar.err(), token);
        }
    }

    /** A JSON object a request, with its id and whose token it was, and nothing of what was sent. */
    private static void assertLog(List<String> lines, String token) throws IOException {
        assertThat(lines).noneMatch(line -> line.contains(token)).noneMatch(line -> line.contains("Two equal spans"));
        List<String> mine =
                lines.stream().filter(line -> line.contains("mine-1")).toList();
        assertThat(mine).hasSize(1);
        JsonNode line = JSON.readTree(mine.get(0));
        assertThat(line.get("loggerName").asText()).isEqualTo("requests");
        assertThat(line.get("kvpList").findValuesAsText("route")).containsExactly("/v1/plan-checks");
        assertThat(line.get("kvpList").findValuesAsText("status")).containsExactly("200");
        assertThat(line.get("kvpList").findValuesAsText("who")).containsExactly("office");
    }

    @Test
    void filesOfTokensThatAreOfNoUseStopTheStart() throws IOException, InterruptedException {
        Path tokens = folder.resolve("tokens");
        assertThat(refused(List.of("not started", "tokens"), "--tokens", tokens.toString()))
                .isEqualTo(2);

        Files.writeString(tokens, "office sha256:12\n");
        Files.setPosixFilePermissions(tokens, PosixFilePermissions.fromString("rw-------"));
        assertThat(refused(List.of("not started", "line 1"), "--tokens", tokens.toString()))
                .isEqualTo(2);

        Files.writeString(tokens, TokenLine.of("office", TokenLine.newToken()).text());
        Files.setPosixFilePermissions(tokens, PosixFilePermissions.fromString("rw-rw-rw-"));
        assertThat(refused(List.of("not started", "can be written by others"), "--tokens", tokens.toString()))
                .isEqualTo(2);
    }

    @Test
    void tlsIsSpokenWithAKeystore() throws Exception {
        Path keystore = Keystores.make(folder);
        Path password = Files.writeString(folder.resolve("password"), Keystores.PASSWORD + "\n");
        HttpClient client =
                HttpClient.newBuilder().sslContext(Keystores.trusting(keystore)).build();
        List<ServedJar> both = List.of(
                new ServedJar(
                        Map.of(), "--tls-keystore", keystore.toString(), "--tls-password-file", password.toString()),
                new ServedJar(
                        Map.of("UNDERPROP_TLS_PASSWORD", Keystores.PASSWORD), "--tls-keystore", keystore.toString()));
        for (ServedJar jar : both) {
            try (jar) {
                assertThat(jar.address()).startsWith("https://");
                HttpResponse<String> answer = send(client, check(jar.address()));
                assertThat(answer.statusCode()).isEqualTo(200);
                assertThat(answer.headers().firstValue("Strict-Transport-Security"))
                        .isPresent();
                assertThat(jar.err()).noneMatch(line -> line.contains(Keystores.PASSWORD));
            }
        }
    }

    @Test
    void keystoreThatCannotBeOpenedStopsTheStart() throws IOException, InterruptedException {
        Path keystore = Keystores.make(folder);
        Path password = Files.writeString(folder.resolve("password"), "another-one");

        assertThat(refused(
                        List.of("not started"),
                        "--tls-keystore",
                        keystore.toString(),
                        "--tls-password-file",
                        password.toString()))
                .isEqualTo(2);
        assertThat(refused(List.of("wants a password"), "--tls-keystore", keystore.toString()))
                .isEqualTo(2);
        assertThat(refused(
                        List.of("cannot be read"),
                        "--tls-keystore",
                        folder.resolve("none").toString()))
                .isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--workers=-1",
                "--body-bytes=1048577",
                "--answer-seconds=1.5",
                "--port=65536",
                "--host=no.such.host.invalid",
                "--log=xml",
                "--tls-password-file=x"
            })
    void optionOutOfItsRangeIsWrongUse(String option) throws IOException, InterruptedException {
        assertThat(refused(List.of("Usage: underprop serve"), option)).isEqualTo(2);
    }
}
