package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import dev.underprop.app.http.ExampleRequest.Likeness;
import io.restassured.response.Response;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The response examples of the contract are what the service answers. With the system property
 * {@code underprop.examples.write} set to true they are first written from the answers, in place.
 */
class ResponseExamplesTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int LINES_OF_THE_CONTRACT = 7;

    private static ExampleService service;
    private static ContractFile contract;
    private static ContractExamples shown;

    @BeforeAll
    static void start() throws IOException {
        service = new ExampleService();
        contract = ContractFile.read();
        if (Boolean.getBoolean("underprop.examples.write")) {
            for (ExampleRequest row : ExampleTable.rows(contract)) {
                contract.replace(row.example(), shownPart(row));
            }
            contract.write();
            contract = ContractFile.read();
        }
        shown = new ContractExamples(contract.tree());
    }

    @AfterAll
    static void stop() {
        service.close();
    }

    static List<ExampleRequest> rows() {
        return ExampleTable.rows(ContractFile.read());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void exampleIsTheAnswer(ExampleRequest row) throws IOException {
        JsonNode example = shown.value(row.example());
        Response response = row.ask(service.port());
        assertThat(response.statusCode()).as(response.asString()).isEqualTo(row.status());
        assertThat(shown.headers(row.operation(), row.status()))
                .allSatisfy((name, values) -> assertHeader(response, name, values));
        JsonNode answer = tree(response);
        switch (row.likeness()) {
            case WHOLE -> assertSame(answer, example);
            case BUT_FOR_INSTANCE -> assertSame(withoutInstance(answer), withoutInstance(example));
            case BEGINNING -> assertThat(answer.textValue()).startsWith(example.textValue());
            case NAMES ->
                assertThat(answer.textValue().lines())
                        .containsAll(example.textValue().lines().toList());
        }
    }

    /** A header is as shown; but the tag of an answer, which goes with its bytes, is not shown and is made from them. */
    private static void assertHeader(Response response, String name, List<String> shown) {
        if (name.equals(Timing.HEADER)) {
            assertThat(response.header(name)).matches("parse;dur=[0-9.]+, solve;dur=[0-9.]+, write;dur=[0-9.]+");
            return;
        }
        List<String> wanted = name.equals("ETag")
                ? List.of(EntityTag.of(response.asByteArray()).text())
                : shown;
        assertThat(wanted).as(name).containsExactly(response.header(name));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void operationShowsTheExampleUnderTheStatus(ExampleRequest row) {
        assertThat(shown.names(row.operation(), row.status())).contains(row.example());
    }

    @Test
    void everyResponseExampleHasARow() {
        Set<String> asked = rows().stream().map(shown::use).collect(Collectors.toCollection(TreeSet::new));

        assertThat(asked).isEqualTo(shown.uses()).hasSizeGreaterThan(20);
    }

    @Test
    void onlyWhatMustDifferIsNotComparedInWhole() {
        assertThat(rows().stream().filter(row -> row.likeness() != Likeness.WHOLE))
                .extracting(ExampleRequest::example)
                .containsExactly(
                        "contractText",
                        "frontPage",
                        "docsPage",
                        "pageFileDemo",
                        "pageFileIcon",
                        "pageFileScript",
                        "pageFileStyle",
                        "metricsText",
                        "problemInternalError");
        assertThat(shown.value("contractText").textValue().lines()).hasSize(LINES_OF_THE_CONTRACT);
    }

    @Test
    void headersAreShownWhereTheyMatter() {
        assertThat(shown.headers("checkPlan", 405)).containsOnlyKeys("Allow");
        assertThat(shown.headers("checkPlan", 503)).containsOnlyKeys("Retry-After");
    }

    /** Equal trees; numbers by their value, since both are read from decimals of at most nine digits. */
    private static void assertSame(JsonNode answer, JsonNode example) {
        boolean same = answer.equals(ResponseExamplesTest::compare, example);
        assertThat(same)
                .as("The answer is%n%s%nbut the example is%n%s", answer.toPrettyString(), example.toPrettyString())
                .isTrue();
    }

    private static int compare(JsonNode one, JsonNode other) {
        if (one.isNumber() && other.isNumber()) {
            return one.decimalValue().compareTo(other.decimalValue());
        }
        return one.equals(other) ? 0 : 1;
    }

    private static JsonNode withoutInstance(JsonNode problem) {
        ObjectNode rest = problem.deepCopy();
        assertThat(rest.remove("instance").textValue()).matches("urn:uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");
        return rest;
    }

    private static JsonNode tree(Response response) throws IOException {
        return response.contentType().matches("application/(problem\\+)?json.*")
                ? JSON.readTree(response.asByteArray())
                : TextNode.valueOf(response.asString());
    }

    /** What is to be written as the example: as much of the answer as its likeness shows. */
    private static JsonNode shownPart(ExampleRequest row) throws IOException {
        Response response = row.ask(service.port());
        assertThat(response.statusCode()).as(row.example()).isEqualTo(row.status());
        JsonNode answer = tree(response);
        return switch (row.likeness()) {
            case WHOLE -> answer;
            case BUT_FOR_INSTANCE ->
                ((ObjectNode) answer.deepCopy())
                        .set(
                                "instance",
                                new ContractExamples(contract.tree())
                                        .value(row.example())
                                        .get("instance"));
            case NAMES ->
                TextNode.valueOf(answer.textValue()
                        .lines()
                        .filter(line -> line.startsWith("# HELP underprop_"))
                        .collect(Collectors.joining("\n", "", "\n")));
            case BEGINNING ->
                TextNode.valueOf(answer.textValue()
                        .lines()
                        .limit(LINES_OF_THE_CONTRACT)
                        .collect(Collectors.joining("\n", "", "\n")));
        };
    }
}
