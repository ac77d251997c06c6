package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.response.Response;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plans a line each over HTTP. */
@ExtendWith(RunningService.class)
class PlanLinesHttpTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String BATCHES = "/v1/plan-check-batches";
    private static final String LINES = "application/x-ndjson";
    private static final String PLAN = new String(ContractFile.read().plan("planLines"), StandardCharsets.UTF_8)
            .lines()
            .findFirst()
            .orElseThrow();

    @Test
    void everyLineHasARecordInOrderAndTheLastSaysThatAllIsThere() throws IOException {
        String body = plan("a") + "\n\n{\"id\":\r\n" + plan("b") + "\n" + plan("a") + "\n"
                + plan("c").replace("12 ft", "12 kip") + "\n" + "x".repeat((1 << 20) + 5) + "\n" + plan("d");

        List<JsonNode> records = records(post(BATCHES, body));

        assertThat(records).hasSize(8);
        assertThat(records.subList(0, 7))
                .extracting(record -> record.get("line").asInt())
                .containsExactly(1, 3, 4, 5, 6, 7, 8);
        assertThat(records.subList(0, 7))
                .extracting(record -> record.get("id").asText())
                .containsExactly("a", "#3", "b", "#5", "c", "#7", "d");
        assertThat(records.get(0).at("/brief/verdict").asText()).isEqualTo("INCOMPLETE");
        assertThat(code(records.get(1))).isEqualTo("syntax");
        assertThat(code(records.get(3))).isEqualTo("id-repeated");
        assertThat(records.get(3).at("/problem/errors/0/line").asInt()).isEqualTo(5);
        assertThat(records.get(4).at("/problem/status").asInt()).isEqualTo(422);
        assertThat(code(records.get(5))).isEqualTo("document-too-large");
        assertThat(records.get(7).toString())
                .isEqualTo("{\"summary\":{\"plans\":7,\"adequate\":0,\"incomplete\":3,\"inadequate\":0,\"unstable\":0,"
                        + "\"notJudged\":4},\"complete\":true}");
    }

    @Test
    void aWholeAnswerIsThatOfTheOtherOperation() throws IOException {
        JsonNode record =
                records(post(BATCHES + "?detail=compact&units=si", plan("a"))).get(0);
        Response alone =
                Client.right().contentType("application/json").body(plan("a")).post("/v1/plan-checks?units=si");

        assertThat(record.get("result")).isEqualTo(JSON.readTree(alone.asByteArray()));
    }

    @Test
    void nothingIsAListToo() throws IOException {
        assertThat(records(post(BATCHES, "\n\n")).get(0).get("complete").asBoolean())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "application/json, */*, '', 415",
        "application/x-ndjson, text/csv, '', 406",
        "application/x-ndjson, */*, ?detail=much, 422",
        "application/x-ndjson, */*, ?workers=3, 422",
    })
    void wrongRequestsAreRefusedAsEverywhere(String type, String accept, String query, int status) {
        Response response = Client.wrong()
                .contentType(type)
                .accept(accept)
                .body(plan("a").getBytes(StandardCharsets.UTF_8))
                .post(BATCHES + query);

        assertThat(response.statusCode()).isEqualTo(status);
        assertThat(response.contentType()).isEqualTo("application/problem+json");
    }

    @Test
    void aRecordComesBeforeTheNextLineIsSent() throws IOException {
        try (Socket socket = new Socket("127.0.0.1", RunningService.port())) {
            socket.setSoTimeout(30_000);
            OutputStream out = head(socket);
            BufferedReader in =
                    new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            for (int i = 0; i < 5; i++) {
                chunk(out, plan("p" + i) + "\n");
                assertThat(lineWith(in, "\"id\":\"p" + i + "\"")).contains("\"brief\"");
            }
            out.write("0\r\n\r\n".getBytes(StandardCharsets.UTF_8));
            out.flush();
            assertThat(lineWith(in, "\"complete\"")).contains("\"plans\":5,");
        }
    }

    @Test
    void aClientThatGoesAwayStopsTheWork() throws IOException, InterruptedException {
        try (Service service = Service.start(Settings.at("127.0.0.1", 0))) {
            try (Socket socket = new Socket("127.0.0.1", service.port())) {
                OutputStream out = head(socket);
                for (int i = 0; i < 400; i++) {
                    chunk(out, plan("p" + i) + "\n");
                }
                BufferedReader in =
                        new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
                assertThat(lineWith(in, "\"id\":\"p0\"")).isNotEmpty();
                assertThat(service.requests()).isEqualTo(1);
                socket.setSoLinger(true, 0);
            }
            long start = System.nanoTime();
            while (service.requests() > 0
                    && System.nanoTime() - start < Duration.ofSeconds(20).toNanos()) {
                Thread.sleep(20);
            }
            assertThat(service.requests()).as("requests that go on").isZero();
        }
    }

    private static OutputStream head(Socket socket) throws IOException {
        OutputStream out = socket.getOutputStream();
        out.write(("POST " + BATCHES + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: " + LINES
                        + "\r\nTransfer-Encoding: chunked\r\nConnection: close\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        return out;
    }

    private static void chunk(OutputStream out, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.write((Integer.toHexString(bytes.length) + "\r\n").getBytes(StandardCharsets.UTF_8));
        out.write(bytes);
        out.write("\r\n".getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    private static String lineWith(BufferedReader in, String words) throws IOException {
        for (String line = in.readLine(); line != null; line = in.readLine()) {
            if (line.contains(words)) {
                return line;
            }
        }
        throw new AssertionError("the answer ended without " + words);
    }

    private static String plan(String id) {
        return PLAN.replace("\"north\"", "\"" + id + "\"");
    }

    private static String code(JsonNode record) {
        return record.at("/problem/errors/0/code").asText();
    }

    private static Response post(String address, String body) {
        Response response = Client.right()
                .contentType(LINES)
                .body(body.getBytes(StandardCharsets.UTF_8))
                .post(address);
        assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
        assertThat(response.contentType()).isEqualTo(LINES);
        return response;
    }

    private static List<JsonNode> records(Response response) throws IOException {
        List<JsonNode> records = new ArrayList<>();
        for (String line : response.asString().lines().toList()) {
            records.add(JSON.readTree(line));
        }
        return records;
    }
}
