package dev.underprop.app.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.atlassian.oai.validator.OpenApiInteractionValidator;
import com.atlassian.oai.validator.model.Request;
import com.atlassian.oai.validator.report.LevelResolver;
import com.atlassian.oai.validator.report.ValidationReport;
import com.atlassian.oai.validator.report.ValidationReport.Level;
import com.atlassian.oai.validator.restassured.RestAssuredRequest;
import com.atlassian.oai.validator.restassured.RestAssuredResponse;
import io.restassured.filter.Filter;
import io.restassured.filter.FilterContext;
import io.restassured.response.Response;
import io.restassured.specification.FilterableRequestSpecification;
import io.restassured.specification.FilterableResponseSpecification;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Holds every response against the contract; requests too, unless they are wrong on purpose. */
final class ContractFilter implements Filter {
    private static final String UNROUTED = "/v1/plan-checks";
    private static final OpenApiInteractionValidator STRICT = validator(LevelResolver.create());
    private static final OpenApiInteractionValidator ANSWERS_ONLY =
            validator(LevelResolver.create().withLevel("validation.request", Level.IGNORE));

    private final boolean wrongOnPurpose;

    ContractFilter(boolean wrongOnPurpose) {
        this.wrongOnPurpose = wrongOnPurpose;
    }

    static String contract() {
        try (InputStream in = ContractFilter.class.getResourceAsStream("/openapi/openapi.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public Response filter(
            FilterableRequestSpecification request, FilterableResponseSpecification wanted, FilterContext context) {
        Response response = context.next(request, wanted);
        ValidationReport report = report(request, response);
        assertThat(report.getMessages().stream().filter(message -> message.getLevel() == Level.ERROR))
                .as("%s %s -> %d, against the contract", request.getMethod(), request.getURI(), response.statusCode())
                .isEmpty();
        assertSafe(response, request.getURI());
        return response;
    }

    private ValidationReport report(FilterableRequestSpecification request, Response response) {
        if (request.getMethod().equals("HEAD") || response.statusCode() == 204 || response.statusCode() == 304) {
            assertThat(response.asByteArray()).isEmpty();
            return ValidationReport.empty();
        }
        if (request.getMethod().equals("OPTIONS")) {
            return STRICT.validateResponse(UNROUTED, Request.Method.POST, RestAssuredResponse.of(response));
        }
        OpenApiInteractionValidator validator = wrongOnPurpose ? ANSWERS_ONLY : STRICT;
        ValidationReport report = validator.validate(RestAssuredRequest.of(request), RestAssuredResponse.of(response));
        return wrongOnPurpose && response.statusCode() >= 400
                ? report.merge(STRICT.validateResponse(UNROUTED, Request.Method.POST, RestAssuredResponse.of(response)))
                : report;
    }

    /** What every answer carries, and what none does. */
    private static void assertSafe(Response response, String address) {
        boolean kept = response.header("ETag") != null;
        assertThat(kept).as("kept").isEqualTo(isKept(address) && response.statusCode() < 400);
        Map<String, String> expected = new LinkedHashMap<>(Replies.SAFETY);
        expected.computeIfPresent("Cache-Control", (name, usual) -> kept ? "no-cache" : usual);
        if (response.statusCode() < 400 && List.of("/", "/docs").contains(path(address))) {
            assertThat(response.header(Replies.POLICY))
                    .startsWith("default-src 'none';")
                    .endsWith("frame-ancestors 'none'");
            expected.remove(Replies.POLICY);
        }
        expected.forEach(
                (name, value) -> assertThat(response.header(name)).as(name).isEqualTo(value));
        assertThat(response.header("Server")).isNull();
        assertThat(response.header(RequestId.HEADER)).matches("[A-Za-z0-9._-]{1,64}");
        assertThat(response.header("Access-Control-Allow-Origin"))
                .as("no other origin may read")
                .isNull();
    }

    /** Whether an address is one whose answers may be kept: whatever does not depend on a plan or the state of the service. */
    private static boolean isKept(String address) {
        String path = path(address);
        return path.equals("/")
                || path.equals("/docs")
                || path.equals("/openapi.yaml")
                || path.startsWith("/pages/")
                || path.startsWith("/v1/catalogue");
    }

    private static String path(String address) {
        return URI.create(address).getPath();
    }

    private static OpenApiInteractionValidator validator(LevelResolver.Builder levels) {
        return OpenApiInteractionValidator.createForInlineApiSpecification(contract())
                .withLevelResolver(levels.build())
                .build();
    }
}
