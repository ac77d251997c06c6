package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.app.Demos;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is not quite HTTP is answered with a problem document too, never with a page. */
@ExtendWith(RunningService.class)
class RawHttpTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "GET /%zz HTTP/1.1                    | 400",
                "GET /v1/checks/a%2Fb HTTP/1.1        | 400",
                "GET /v1/checks/%00 HTTP/1.1          | 400",
                "GET /v1/checks/../../x HTTP/1.1      | 404",
                "GET /v1/checks?x=%zz HTTP/1.1        | 400",
                "GET /v1/checks/%C3%28 HTTP/1.1       | 400",
                "GET /v1//checks HTTP/1.1 | 400",
                "GET /v1/checks/ HTTP/1.1 | 404",
                "GET /V1/checks HTTP/1.1 | 404",
                "BREW /v1/checks HTTP/1.1 | 405",
                "GET nothing HTTP/1.1                 | 400",
                "GARBAGE                              | 400",
                "GET / HTTP/9.9                       | 505",
            })
    void requestLineThatCannotBeReadGetsAProblem(String line, int status) throws IOException {
        assertProblem(exchange(line + "\r\nHost: localhost\r\nConnection: close\r\n\r\n"), status);
    }

    @Test
    void missingHostGetsAProblem() throws IOException {
        assertProblem(exchange("GET / HTTP/1.1\r\nConnection: close\r\n\r\n"), 400);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "POST /v1/pad-sizings HTTP/1.1 | text/html        | 406",
                "POST /v1/checks HTTP/1.1      | application/json | 405",
                "POST /v1/nothing HTTP/1.1     | application/json | 404",
            })
    void whoStillSendsWhenRefusedGetsTheReasonAndKeepsTheConnection(String line, String accept, int status)
            throws IOException, InterruptedException {
        try (Wire wire = new Wire(RunningService.port())) {
            wire.send(line + "\r\nHost: localhost\r\nAccept: " + accept + "\r\nContent-Type: application/json\r\n"
                    + "Content-Length: 2\r\n\r\n");
            Thread.sleep(300);
            wire.send("{}");
            assertThat(wire.head()).startsWith("HTTP/1.1 " + status + " ").doesNotContain("Connection: close");
            String answer = wire.send("GET /health/live HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n")
                    .answer();
            assertThat(answer).contains("HTTP/1.1 200 ");
        }
    }

    @Test
    void whoWouldSendMoreThanIsReadIsToldThatTheConnectionEnds() throws IOException {
        String head = "POST /v1/nothing HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n";
        try (Wire wire = new Wire(RunningService.port())) {
            String answer =
                    wire.send(head + "Content-Length: 100000000\r\n\r\n{").answer();
            assertThat(answer).startsWith("HTTP/1.1 404 ").contains("Connection: close");
        }
        try (Wire wire = new Wire(RunningService.port())) {
            String answer = wire.send(head + "Content-Length: 2\r\nExpect: 100-continue\r\n\r\n")
                    .answer();
            assertThat(answer).startsWith("HTTP/1.1 404 ").contains("Connection: close");
        }
    }

    @Test
    void hugeHeaderGetsAProblem() throws IOException {
        String header = "X: " + "x".repeat(40_000);
        assertProblem(exchange("GET / HTTP/1.1\r\nHost: localhost\r\n" + header + "\r\n\r\n"), 431);
    }

    @Test
    void hugeAddressGetsAProblem() throws IOException {
        String answer = exchange("GET /" + "x".repeat(40_000) + " HTTP/1.1\r\nHost: localhost\r\n\r\n");
        assertProblem(answer, 414);
    }

    @Test
    void chunkedBodyAboveTheLimitIsTooLarge() throws IOException {
        String chunk = "10000\r\n" + " ".repeat(0x10000) + "\r\n";
        try (Wire wire = new Wire(RunningService.port())) {
            wire.send(post("Transfer-Encoding: chunked") + chunk.repeat(16) + "1\r\n \r\n");
            String answer = wire.answer();
            assertProblem(answer, 413);
            assertThat(answer).contains("The body is larger than 1048576 bytes.");
        }
    }

    @Test
    void lengthAboveTheLimitIsTooLargeBeforeAnythingIsSent() throws IOException {
        assertProblem(exchange(post("Content-Length: 999999999999")), 413);
    }

    @Test
    void missingContentTypeIsRefused() throws IOException {
        String answer = exchange("POST /v1/plan-checks HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
                + "Content-Length: 2\r\n\r\n{}");
        assertProblem(answer, 415);
        assertThat(answer).contains("the request has no Content-Type that says which");
    }

    @Test
    void emptyBodyIsUnreadable() throws IOException {
        String answer = exchange(post("Content-Length: 0"));
        assertProblem(answer, 400);
        assertThat(answer).contains("document-empty");
    }

    @Test
    void chunkedBodyIsRead() throws IOException {
        byte[] plan = Demos.text("two-spans.yaml").getBytes(StandardCharsets.UTF_8);
        try (Wire wire = new Wire(RunningService.port())) {
            wire.send(post("Transfer-Encoding: chunked") + Integer.toHexString(plan.length) + "\r\n");
            wire.send(plan).send("\r\n0\r\n\r\n");
            assertThat(wire.answer()).startsWith("HTTP/1.1 200 ");
        }
    }

    @Test
    void bodyThatDripsIsGivenUp() throws IOException, InterruptedException {
        Settings impatient = Settings.at("127.0.0.1", 0).withBodyTime(Duration.ofMillis(400));
        try (Service service = Service.start(impatient);
                Wire wire = new Wire(service.port())) {
            wire.send(post("Content-Length: 100"));
            for (int i = 0; i < 6; i++) {
                wire.send(" ");
                Thread.sleep(100);
            }
            String answer = wire.answer();
            assertProblem(answer, 400);
            assertThat(answer).contains("The body did not arrive within 400 ms.");
        }
    }

    @Test
    void bodyThatBreaksOffHarmsNothing() throws IOException {
        try (Wire wire = new Wire(RunningService.port())) {
            wire.send(post("Content-Length: 100") + "{");
        }
        assertThat(Client.right().get("/health/ready").statusCode()).isEqualTo(200);
    }

    private static String post(String header) {
        return "POST /v1/plan-checks HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: application/yaml\r\n"
                + header + "\r\n\r\n";
    }

    private static String exchange(String request) throws IOException {
        try (Wire wire = new Wire(RunningService.port())) {
            return wire.send(request).answer();
        }
    }

    private static void assertProblem(String answer, int status) {
        assertThat(answer).startsWith("HTTP/1.1 " + status + " ");
        assertThat(answer).containsIgnoringCase("content-type: application/problem+json");
        assertThat(answer).contains("\"status\":" + status);
        assertThat(answer).doesNotContainIgnoringCase("<html").doesNotContainIgnoringCase("jetty");
    }
}
