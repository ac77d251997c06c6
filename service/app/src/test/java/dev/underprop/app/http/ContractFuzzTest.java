package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Requests by chance, valid and nearly so, to every operation of the contract: no failure, no status that the operation does
 * not declare, no answer off its schema. As many as the property {@code underprop.fuzz.requests} says, few without it; the
 * property {@code underprop.fuzz.seed} makes others.
 */
@ExtendWith(RunningService.class)
class ContractFuzzTest {
    private static final int REQUESTS = Integer.getInteger("underprop.fuzz.requests", 200);
    private static final long SEED = Long.getLong("underprop.fuzz.seed", 20_260_101L);

    private static final List<String> TYPES = List.of(
            "application/json",
            "application/json; charset=utf-8",
            "application/yaml",
            "text/csv",
            "application/json; charset=latin1",
            "nonsense");
    private static final List<String> ACCEPTS =
            List.of("*/*", "application/json", "text/html", "text/plain;q=0.2", "application/xml", "no/*;q=2");
    private static final List<String> WORDS = List.of(
            "units", "detail", "q", "table", "limit", "offset", "us", "si", "full", "0", "-1", "2", "soils", "%00",
            "x y", "\u00e9");

    private final Random random = new Random(SEED);
    private final NearPlans plans = new NearPlans(random);
    private final List<String> operations = ContractFile.read().operations();

    @Test
    void nothingFailsAndNothingIsOffTheContract() {
        Map<Integer, Integer> byStatus = new TreeMap<>();
        TreeSet<String> asked = new TreeSet<>();
        for (int i = 0; i < REQUESTS; i++) {
            String operation = operations.get(random.nextInt(operations.size()));
            boolean plan = operation.startsWith("POST") || random.nextInt(3) > 0;
            String one = plan ? any("POST ") : operation;
            Response response = ask(one, i);
            assertThat(response.statusCode())
                    .as("request %d, seed %d: %s", i, SEED, one)
                    .isLessThan(500);
            byStatus.merge(response.statusCode(), 1, Integer::sum);
            asked.add(one);
        }
        System.out.println(
                REQUESTS + " requests by chance to " + asked.size() + " operations, answers by status: " + byStatus);
        assertThat(byStatus).containsKeys(200, 400, 404, 406, 415, 422);
    }

    private String any(String method) {
        List<String> some =
                operations.stream().filter(one -> one.startsWith(method)).toList();
        return some.get(random.nextInt(some.size()));
    }

    private Response ask(String operation, int number) {
        String method = operation.substring(0, operation.indexOf(' '));
        RequestSpecification request = Client.wrong().header("X-Request-Id", "chance-" + number);
        if (random.nextInt(10) == 0) {
            request.header("Accept", pick(ACCEPTS));
        }
        if (random.nextInt(20) == 0) {
            request.header("If-None-Match", random.nextBoolean() ? "*" : "\"" + random.nextInt() + "\"");
        }
        if (method.equals("POST")) {
            byte[] body = body();
            request.contentType(random.nextInt(12) == 0 ? pick(TYPES) : "application/json")
                    .body(body);
        }
        return request.request(method, path(operation.substring(method.length() + 1)) + query());
    }

    /** A plan as JSON, sometimes cut short or with a byte that is another. */
    private byte[] body() {
        byte[] body = plans.next().toString().getBytes(StandardCharsets.UTF_8);
        if (random.nextInt(12) == 0) {
            return Arrays.copyOf(body, random.nextInt(body.length));
        }
        if (random.nextInt(12) == 0) {
            body[random.nextInt(body.length)] = (byte) random.nextInt(256);
        }
        return body;
    }

    private String path(String template) {
        List<String> names = List.of("beam-bending", "soils", "faulty", "page.css", "none", "a b", "%", "\u00fc");
        return template.replaceAll("\\{[^}]+\\}", encoded(pick(names)));
    }

    private String query() {
        if (random.nextInt(4) > 0) {
            return "";
        }
        StringBuilder query = new StringBuilder("?");
        for (int i = 0; i <= random.nextInt(3); i++) {
            query.append(i > 0 ? "&" : "")
                    .append(encoded(pick(WORDS)))
                    .append('=')
                    .append(encoded(pick(WORDS)));
        }
        return query.toString();
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    private String pick(List<String> some) {
        return some.get(random.nextInt(some.size()));
    }
}
