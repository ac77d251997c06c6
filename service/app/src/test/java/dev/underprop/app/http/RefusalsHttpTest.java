package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.app.Demos;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Requests that are refused, each with the problem document that the contract promises. */
@ExtendWith(RunningService.class)
class RefusalsHttpTest {
    private static final String CHECK = "/v1/plan-checks";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "text/csv",
                "text/yaml",
                "application/x-yaml",
                "application/xml",
                "application/json; charset=utf-16",
                "application/json; charset=iso-8859-1",
                "application/vnd.api+json",
                "json",
                "application/json; charset"
            })
    void bodyOfAnotherMediaTypeIsRefused(String type) {
        Response refused = post(type, bytes("{}"));

        assertProblem(refused, 415, "unsupported-media-type");
        assertThat(detail(refused)).startsWith("Plans are read as application/json or application/yaml");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "application/yaml",
                "application/yaml; charset=utf-8",
                "APPLICATION/YAML;charset=\"UTF-8\"",
                "application/yaml; profile=x"
            })
    void mediaTypeIsReadAsHttpSays(String type) {
        assertThat(Client.wrong()
                        .header("Content-Type", type)
                        .body(bytes(Demos.text("two-spans.yaml")))
                        .post(CHECK)
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void compressedBodyIsRefused() throws IOException {
        ByteArrayOutputStream zipped = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(zipped)) {
            out.write(bytes(Demos.text("two-spans.yaml")));
        }
        Response refused = Client.wrong()
                .header("Content-Type", "application/yaml")
                .header("Content-Encoding", "deflate")
                .body(zipped.toByteArray())
                .post(CHECK);

        assertProblem(refused, 415, "unsupported-media-type");
        assertThat(detail(refused)).contains("not in deflate");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "text/html                              | 406",
                "application/xml, text/plain            | 406",
                "application/json;q=0                   | 406",
                "*/*;q=1, application/json;q=0          | 406",
                "application/json;q=2                   | 406",
                "application/json                       | 200",
                "application/*                          | 200",
                "*/*                                    | 200",
                "text/html, application/json;q=0.1      | 200",
                "application/json;q=0.5, */*;q=0        | 200",
            })
    void acceptIsNegotiated(String accept, int status) {
        Response answer = Client.wrong().header("Accept", accept).get("/v1/checks");

        assertThat(answer.statusCode()).isEqualTo(status);
        if (status == 406) {
            assertProblem(answer, 406, "not-acceptable");
            assertThat(detail(answer)).isEqualTo("The resource is available as application/json only.");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "units=metric           | ?units  | choice-unknown     | Use one of: us, si.",
                "units=                 | ?units  | choice-unknown     | Use one of: us, si.",
                "units=US               | ?units  | choice-unknown     | Use one of: us, si.",
                "detail=everything      | ?detail | choice-unknown     | Use one of: compact, full.",
                "unit=si                | ?unit   | unknown-parameter  | Did you mean units?",
                "working=yes            | ?working| choice-unknown     | 'Use one of: true, false.'",
                "report=json            | ?report | unknown-parameter  | 'Leave it out, or use one of: units, detail, working.'",
                "units=us&units=si      | ?units  | parameter-repeated | Keep one of them.",
            })
    void queryParameterIsKnownOrRefused(String query, String pointer, String code, String remedy) {
        Response refused = Client.wrong()
                .contentType("application/yaml")
                .body(bytes(Demos.text("two-spans.yaml")))
                .post(CHECK + "?" + query);

        assertProblem(refused, 422, "faulty");
        assertThat(refused.jsonPath().getString("errors[0].pointer")).isEqualTo(pointer);
        assertThat(refused.jsonPath().getString("errors[0].code")).isEqualTo(code);
        assertThat(refused.jsonPath().getString("errors[0].remedy")).isEqualTo(remedy);
    }

    @Test
    void allFaultsOfAQueryAreToldAtOnce() {
        Response refused =
                Client.wrong().contentType("application/yaml").body(bytes("{}")).post(CHECK + "?units=x&detail=y&z=1");

        assertProblem(refused, 422, "faulty");
        assertThat(refused.jsonPath().getList("errors.pointer")).containsExactlyInAnyOrder("?units", "?detail", "?z");
    }

    @Test
    void resourceWithoutParametersRefusesThem() {
        assertProblem(Client.wrong().get("/v1/checks?units=si"), 422, "faulty");
        assertProblem(Client.wrong().get("/v1/checks/beam-bending?x"), 422, "faulty");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "GET    | /v1/plan-checks      | OPTIONS, POST",
                "HEAD   | /v1/plan-checks      | OPTIONS, POST",
                "DELETE | /v1/layout-analyses  | OPTIONS, POST",
                "POST   | /v1/checks           | GET, HEAD, OPTIONS",
                "PUT    | /v1/checks/x         | GET, HEAD, OPTIONS",
                "PATCH  | /                    | GET, HEAD, OPTIONS",
                "TRACE  | /health/live         | GET, HEAD, OPTIONS",
            })
    void methodThatIsNotAnsweredNamesThoseThatAre(String method, String path, String allow) {
        Response refused = Client.wrong().request(method, path);

        assertThat(refused.statusCode()).isEqualTo(405);
        assertThat(refused.header("Allow")).isEqualTo(allow);
        assertThat(refused.contentType()).isEqualTo("application/problem+json");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"/v1/plan-checks | OPTIONS, POST", "/v1/checks | GET, HEAD, OPTIONS"})
    void optionsTellsTheMethods(String path, String allow) {
        Response options = Client.wrong().options(path);

        assertThat(options.statusCode()).isEqualTo(204);
        assertThat(options.header("Allow")).isEqualTo(allow);
        assertThat(options.asByteArray()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/nothing", "/v1", "/v1/", "/v2/plan-checks", "/health", "/openapi.json"})
    void otherAddressIsNotFound(String path) {
        assertProblem(Client.wrong().get(path), 404, "not-found");
        assertThat(Client.wrong().options(path).statusCode()).isEqualTo(404);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "application/json | {\"id\": 1, \"id\": 2}            | duplicate-key",
                "application/yaml | `id: a\nid: b`                    | duplicate-key",
                "application/json | {\"id\": NaN}                     | number-not-finite",
                "application/json | {\"id\": Infinity}                | number-not-finite",
                "application/json | {\"id\": }                        | syntax",
                "application/json | {} {}                             | trailing-content",
                "application/json | ``                                | document-empty",
                "application/yaml | ``                                | document-empty",
                "application/yaml | `a: &x 1\nb: *x`                  | yaml-anchor",
                "application/yaml | `--- {}\n--- {}`                  | yaml-several-documents",
                "application/yaml | a: !!java.net.URL [x]             | yaml-tag",
            })
    void textThatCannotBeReadIsSaidWhere(String type, String text, String code) {
        Response refused = post(type, bytes(text));

        assertProblem(refused, 400, "unreadable");
        assertThat(refused.jsonPath().getList("errors.code")).contains(code);
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE", "UTF-32", "UTF-32LE"})
    void otherEncodingIsUnreadable(String charset) {
        String plan = Demos.text("invalid-sizes.json");

        Response refused = post("application/json", plan.getBytes(Charset.forName(charset)));

        assertProblem(refused, 400, "unreadable");
        assertThat(refused.jsonPath().getString("errors[0].code")).isEqualTo("encoding-not-utf8");
    }

    @ParameterizedTest
    @ValueSource(strings = {"application/json", "application/yaml"})
    void sixBytesThatLookLikeUtf32AreUnreadable(String type) {
        assertProblem(post(type, new byte[] {0, 0, 0, 0x7b, 0, 0}), 400, "unreadable");
    }

    @Test
    void bodyAboveTheLimitIsTooLarge() {
        Response refused = post("application/json", new byte[(1 << 20) + 1]);

        assertProblem(refused, 413, "too-large");
        assertThat(detail(refused)).isEqualTo("The body is larger than 1048576 bytes.");
    }

    @Test
    void bodyAtTheLimitIsRead() {
        byte[] blanks = " ".repeat(1 << 20).getBytes(StandardCharsets.UTF_8);

        assertThat(post("application/json", blanks).statusCode()).isEqualTo(400);
    }

    private static Response post(String type, byte[] body) {
        RequestSpecification request = Client.wrong().header("Content-Type", type);
        return body.length == 0 ? request.post(CHECK) : request.body(body).post(CHECK);
    }

    private static void assertProblem(Response response, int status, String type) {
        assertThat(response.statusCode()).as(response.asString()).isEqualTo(status);
        assertThat(response.contentType()).isEqualTo("application/problem+json");
        assertThat(response.jsonPath().getString("type")).isEqualTo("/problems/" + type);
        assertThat(response.jsonPath().getInt("status")).isEqualTo(status);
    }

    private static String detail(Response response) {
        return response.jsonPath().getString("detail");
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
