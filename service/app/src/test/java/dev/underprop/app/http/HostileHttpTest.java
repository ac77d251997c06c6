package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.app.Demos;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Requests that want to be read in two ways, or to reach what is not theirs. */
@ExtendWith(RunningService.class)
class HostileHttpTest {
    private static final String POST =
            "POST /v1/plan-checks HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/yaml\r\n";

    private static String exchange(String request) throws IOException {
        try (Wire wire = new Wire(RunningService.port())) {
            return wire.send(request).answer();
        }
    }

    /** One answer, 400 or 501, and the connection closed: what follows is not taken for a request. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Content-Length: 4\r\nTransfer-Encoding: chunked\r\n",
                "Transfer-Encoding: chunked\r\nContent-Length: 4\r\n",
                "Content-Length: 4\r\nContent-Length: 5\r\n",
                "Content-Length: 4, 5\r\n",
                "Content-Length: +4\r\n",
                "Content-Length: 0x4\r\n",
                "Content-Length: -1\r\n",
                "Transfer-Encoding: chunked, identity\r\n",
                "Transfer-Encoding: xchunked\r\n",
                "Transfer-Encoding : chunked\r\n",
                " Transfer-Encoding: chunked\r\n"
            })
    void lengthThatCanBeReadInTwoWaysIsRefused(String headers) throws IOException {
        String answer = exchange(POST + headers + "\r\n0\r\n\r\nGET /health/live HTTP/1.1\r\nHost: localhost\r\n\r\n");

        assertThat(answer).matches("(?s)HTTP/1.1 (400|501) .*").containsIgnoringCase("connection: close");
        assertThat(answer.split("HTTP/1\\.1 ", -1)).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/pages/../logback.xml",
                "/pages/..%2flogback.xml",
                "/pages/%2e%2e/logback.xml",
                "/pages/%2e%2e%2flogback.xml",
                "/pages/..%5clogback.xml",
                "/pages/..;/logback.xml",
                "/pages/./../../etc/passwd",
                "/pages//etc/passwd",
                "/pages/front.js%00.css",
                "/pages/.",
                "/pages/..",
                "/pages/",
                "/pages/dev/underprop/app/Main.class",
                "/pages/front.html"
            })
    void pagesHoldNothingButTheirFiles(String path) throws IOException {
        String answer = exchange("GET " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");

        assertThat(answer).matches("(?s)HTTP/1.1 (400|404) .*").contains("application/problem+json");
    }

    @ParameterizedTest
    @CsvSource({
        "'gzip, gzip', 415",
        "'gzip,identity', 415",
        "'identity, gzip', 415",
        "'x', 415",
        "'gzip;q=1', 415",
        "'', 200",
        "'identity', 200"
    })
    void listOfCodingsIsNotUnpacked(String coding, int status) {
        Response answer = Client.wrong()
                .contentType("application/yaml")
                .header("Content-Encoding", coding)
                .body(Demos.text("two-spans.yaml").getBytes(StandardCharsets.UTF_8))
                .post("/v1/plan-checks");

        assertThat(answer.statusCode()).isEqualTo(status);
    }

    @Test
    void codingsInSeveralHeadersAreAListToo() throws IOException {
        String answer = exchange(POST + "Content-Encoding: identity\r\nContent-Encoding: gzip\r\nContent-Length: 2\r\n"
                + "Connection: close\r\n\r\n{}");

        assertThat(answer).startsWith("HTTP/1.1 415 ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a\r\n Set-Cookie: x=1",
                "a\rSet-Cookie: x=1",
                "a\u0000b",
                "\u00e9",
                "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa",
                "../../x",
                ""
            })
    void hostileRequestIdIsNotGivenBack(String id) throws IOException {
        String answer = exchange("GET /health/live HTTP/1.1\r\nHost: localhost\r\nX-Request-Id: " + id
                + "\r\nConnection: close\r\n\r\n");

        assertThat(answer).containsPattern("(?i)x-request-id: [A-Za-z0-9-]{36}\r\n");
        assertThat(answer.toLowerCase(java.util.Locale.ROOT))
                .doesNotContain("\r\nset-cookie")
                .doesNotContain("../");
    }

    /** A line may end with LF alone (RFC 9112, section 2.2): the id ends there, and what follows is a header of the request. */
    @Test
    void idEndsWithItsLine() throws IOException {
        String answer = exchange("GET /health/live HTTP/1.1\r\nHost: localhost\r\nX-Request-Id: a\nSet-Cookie: x=1\r\n"
                + "Connection: close\r\n\r\n");

        assertThat(answer).containsPattern("(?i)x-request-id: a\r\n");
        assertThat(answer.toLowerCase(java.util.Locale.ROOT)).doesNotContain("set-cookie");
    }

    @Test
    void whatFollowsARefusedBodyIsNoRequest() throws IOException {
        String answer =
                exchange(POST + "Content-Length: 999999999\r\n\r\nGET /health/live HTTP/1.1\r\nHost: x\r\n\r\n");

        assertThat(answer).startsWith("HTTP/1.1 413 ");
        assertThat(answer.split("HTTP/1\\.1 ", -1)).hasSize(2);
    }
}
