package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.app.Demos;
import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Codings of bodies, names of requests, and what other origins may do. */
@ExtendWith(RunningService.class)
class MannersHttpTest {
    private static final String CHECKS = "/v1/plan-checks";

    @ParameterizedTest
    @ValueSource(strings = {"gzip", "deflate, gzip;q=0.5", "x-gzip", "*", "br, *;q=0.1"})
    void packsForThoseWhoWant(String accepted) throws Exception {
        String path = "/v1/catalogue/soils";
        HttpResponse<byte[]> packed = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(RunningService.address() + path))
                                .header("Accept-Encoding", accepted)
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
        Response plain = Client.right().get(path);

        assertThat(packed.headers().firstValue("Content-Encoding")).contains("gzip");
        assertThat(packed.headers().allValues("Vary")).containsExactly("Accept-Encoding");
        assertThat(packed.headers().firstValue("ETag")).contains("W/" + plain.header("ETag"));
        assertThat(unpacked(packed.body())).isEqualTo(plain.asByteArray());
        assertThat(packed.body().length).isLessThan(plain.asByteArray().length / 2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"identity", "gzip;q=0", "gzip;q=0.000, *", "*;q=0", "deflate, br"})
    void doesNotPackForOthers(String accepted) {
        Response plain = Client.right().header("Accept-Encoding", accepted).get("/v1/catalogue/soils");

        assertThat(plain.header("Content-Encoding")).isNull();
        assertThat(plain.jsonPath().getString("part")).isEqualTo("soils");
    }

    @Test
    void shortAnswersGoAsTheyAre() {
        Response health = Client.right().header("Accept-Encoding", "gzip").get("/health/live");

        assertThat(health.header("Content-Encoding")).isNull();
        assertThat(health.header("Vary")).isEqualTo("Accept-Encoding");
    }

    @Test
    void packedPlanIsTheSamePlan() {
        byte[] plan = Demos.text("two-spans.yaml").getBytes(StandardCharsets.UTF_8);
        Response answer = packedPlan(packed(plan));

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.asByteArray())
                .isEqualTo(Client.right()
                        .contentType("application/yaml")
                        .body(plan)
                        .post(CHECKS)
                        .asByteArray());
    }

    @Test
    void brokenPackingIsUnreadable() {
        byte[] packed = packed(Demos.text("two-spans.yaml").getBytes(StandardCharsets.UTF_8));
        byte[] spoilt = packed.clone();
        spoilt[packed.length / 2] ^= 0x55;

        assertThat(packedPlan(spoilt).statusCode()).isEqualTo(400);
        assertThat(packedPlan(Arrays.copyOf(packed, packed.length / 2)).statusCode())
                .isEqualTo(400);
        assertThat(packedPlan("id: plain".getBytes(StandardCharsets.UTF_8))
                        .jsonPath()
                        .getString("detail"))
                .isEqualTo("The body is not well-formed gzip.");
    }

    /** A thousandfold when unpacked: only its first mebibyte is. */
    @Test
    void bombIsTooLarge() {
        byte[] bomb = packed(new byte[200 << 20]);

        assertThat(bomb.length).isLessThan(1 << 20);
        assertThat(packedPlan(bomb).statusCode()).isEqualTo(413);
    }

    @Test
    void otherCodingIsUnsupported() {
        Response refused = Client.wrong()
                .contentType("application/yaml")
                .header("Content-Encoding", "br")
                .body("id: x".getBytes(StandardCharsets.UTF_8))
                .post(CHECKS);

        assertThat(refused.statusCode()).isEqualTo(415);
        assertThat(refused.header("Accept-Encoding")).isEqualTo("gzip");
    }

    @Test
    void requestKeepsItsName() {
        assertThat(Client.right()
                        .header(RequestId.HEADER, "office-7.a_1")
                        .get("/health/live")
                        .header(RequestId.HEADER))
                .isEqualTo("office-7.a_1");
    }

    @ParameterizedTest
    @CsvSource({"'two words'", "'line%0Abreak'", "'<script>'"})
    void requestWithAnUnusableNameGetsAnother(String sent) {
        String given = Client.right()
                .header(RequestId.HEADER, sent)
                .get("/health/live")
                .header(RequestId.HEADER);

        assertThat(given).isNotEqualTo(sent).hasSize(36);
    }

    /** Problems that Jetty tells by itself carry a name too. */
    @Test
    void malformedRequestHasAName() throws IOException {
        try (Wire wire = new Wire(RunningService.port())) {
            assertThat(wire.send("GET /%zz HTTP/1.1\r\nHost: x\r\nX-Request-Id: mine\r\nConnection: close\r\n\r\n")
                            .answer())
                    .contains(" 400 ")
                    .containsIgnoringCase("x-request-id:");
        }
    }

    private static Response packedPlan(byte[] body) {
        return Client.wrong()
                .contentType("application/yaml")
                .header("Content-Encoding", "gzip")
                .body(body)
                .post(CHECKS);
    }

    private static byte[] packed(byte[] bytes) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(bytes);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static byte[] unpacked(byte[] bytes) throws IOException {
        try (GZIPInputStream gzip = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
            return gzip.readAllBytes();
        }
    }
}
