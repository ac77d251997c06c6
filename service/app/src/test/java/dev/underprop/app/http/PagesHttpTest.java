package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.app.report.ProblemKind;
import io.restassured.http.Header;
import io.restassured.response.Response;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(RunningService.class)
class PagesHttpTest {

    @Test
    void frontSaysWhatItIsAndCautions() {
        Response front = Client.right().get("/");

        assertThat(front.statusCode()).isEqualTo(200);
        assertThat(front.contentType()).isEqualTo("text/plain;charset=utf-8");
        assertThat(front.asString())
                .contains("temporary support of a house floor")
                .contains("licensed engineer")
                .contains("Nobody under or above the bay")
                .contains("/openapi.yaml");
    }

    @Test
    void browserGetsAPage() {
        Response front = Client.right()
                .header("Accept", "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8")
                .get("/");

        assertThat(front.contentType()).isEqualTo("text/html;charset=utf-8");
        assertThat(front.header("Vary")).startsWith("Accept");
        assertThat(front.asString()).contains("licensed engineer").contains("Nobody under or above");
    }

    /** Whatever the two pages load is there, and comes from the service itself. */
    @ParameterizedTest
    @ValueSource(strings = {"/", "/docs"})
    void pagesLoadNothingFromElsewhere(String path) {
        String page = Client.right().header("Accept", "text/html").get(path).asString();
        List<String> addresses = Pattern.compile("(?:src|href)=\"([^\"#]+)\"")
                .matcher(page)
                .results()
                .map(found -> found.group(1))
                .toList();

        assertThat(addresses).isNotEmpty().allMatch(address -> address.startsWith("/"));
        for (String address : addresses) {
            assertThat(Client.right().get(address).statusCode()).as(address).isEqualTo(200);
        }
    }

    @Test
    void nothingElseIsServedAsAFile() {
        assertThat(Client.wrong().get("/pages/logback.xml").statusCode()).isEqualTo(404);
        assertThat(Client.wrong().get("/pages/..%2Fdemo%2Fbare.yaml").statusCode())
                .isIn(400, 404);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/docs", "/openapi.yaml", "/pages/page.css"})
    void whatIsHeldIsNotSentAgain(String path) {
        String tag = Client.right().get(path).header("ETag");
        Response again = Client.right().header("If-None-Match", tag).get(path);

        assertThat(again.statusCode()).isEqualTo(304);
        assertThat(again.header("ETag")).isEqualTo(tag);
    }

    @Test
    void contractIsServedByteForByte() {
        Response contract = Client.right().get("/openapi.yaml");

        assertThat(contract.statusCode()).isEqualTo(200);
        assertThat(contract.asString()).isEqualTo(ContractFilter.contract());
    }

    @ParameterizedTest
    @ValueSource(strings = {"/health/live", "/health/ready"})
    void healthIsUp(String path) {
        Response health = Client.right().get(path);

        assertThat(health.statusCode()).isEqualTo(200);
        assertThat(health.jsonPath().getString("status")).isEqualTo("UP");
        assertThat(health.jsonPath().getString("engine.version")).matches("[0-9]+\\.[0-9]+\\.[0-9]+.*");
    }

    @Test
    void everyListedCheckHasAPage() {
        List<String> ids = Client.right().get("/v1/checks").jsonPath().getList("checks.id");

        assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
        for (String id : ids) {
            Response page = Client.right().get("/v1/checks/" + id);
            assertThat(page.statusCode()).as(id).isEqualTo(200);
            assertThat(page.jsonPath().getString("id")).isEqualTo(id);
        }
    }

    @Test
    void unknownCheckIsNotFound() {
        Response missing = Client.right().get("/v1/checks/beam-bendin");

        assertThat(missing.statusCode()).isEqualTo(404);
        assertThat(missing.jsonPath().getString("detail")).isEqualTo("There is no check with the id beam-bendin.");
    }

    @ParameterizedTest
    @EnumSource
    void everyKindOfProblemHasAPage(ProblemKind kind) {
        Response page = Client.right().get("/problems/" + kind.path());

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.contentType()).isEqualTo("text/plain;charset=utf-8");
        assertThat(page.asString()).isNotBlank();
    }

    /** Headers but for those that are new each time. */
    private static List<Header> settled(Response response) {
        return response.headers().asList().stream()
                .filter(header -> !header.hasSameNameAs(new Header(RequestId.HEADER, "")))
                .toList();
    }

    @Test
    void unknownProblemIsNotFound() {
        assertThat(Client.right().get("/problems/trouble").statusCode()).isEqualTo(404);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/openapi.yaml", "/v1/checks", "/v1/catalogue", "/health/live", "/problems/faulty"})
    void headHasTheHeadersOfGet(String path) {
        Response get = Client.right().get(path);
        Response head = Client.wrong().head(path);

        assertThat(head.statusCode()).isEqualTo(200);
        assertThat(settled(head)).isEqualTo(settled(get));
        assertThat(head.header("Content-Length")).isEqualTo(Integer.toString(get.asByteArray().length));
    }
}
