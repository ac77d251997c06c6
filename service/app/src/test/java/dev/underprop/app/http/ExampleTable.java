package dev.underprop.app.http;

import static dev.underprop.app.http.ExampleRequest.get;
import static dev.underprop.app.http.ExampleRequest.post;

import dev.underprop.app.http.ExampleRequest.Likeness;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;

/** For every response example of the contract, the request that produces it. */
final class ExampleTable {
    private static final String ANALYSES = "/v1/layout-analyses";
    private static final String CHECKS = "/v1/plan-checks";
    private static final String SIZINGS = "/v1/pad-sizings";
    private static final String LIFTS = "/v1/lift-plans";
    private static final String CATALOGUE = "/v1/catalogue";
    private static final String BATCHES = "/v1/plan-check-batches";
    private static final String LINES = "application/x-ndjson";
    private static final String JSON = "application/json";
    private static final String YAML = "application/yaml";

    /** One of two stages done, the floor over A2 lower than its screw would have it. */
    private static final String GOES_ON = String.join(
            "\n  ",
            "target: { level: 0 in }",
            "turned: [{ post: A1, raise: 1/8 in }, { post: A2, raise: 1/8 in }, { post: A3, raise: 1/8 in }, { post: A4, raise: 1/8 in }]",
            "readings: [{ point: over A1, level: -1/8 in }, { point: over A2, level: -3/16 in }, { point: over A3, level: -1/8 in }, { point: over A4, level: -1/8 in }]");

    private ExampleTable() {}

    static List<ExampleRequest> rows(ContractFile contract) {
        byte[] twoBays = contract.plan("planTwoBays");
        byte[] overloaded = changed(twoBays, "dead: 500 plf", "dead: 700 plf", StandardCharsets.UTF_8);
        byte[] latin = changed(twoBays, "Two equal bays", "Deux trav\u00e9es", StandardCharsets.ISO_8859_1);
        byte[] sillOut = contract.plan("planSillOut");
        byte[] broken = contract.plan("planBroken");
        byte[] raised = contract.plan("planRaised");
        byte[] weak = changed(raised, "load: 3500 lb", "load: 2000 lb", StandardCharsets.UTF_8);
        byte[] goesOn = changed(raised, "target: { level: 0 in }", GOES_ON, StandardCharsets.UTF_8);
        byte[] syntax = "{ \"basis\": \"us-asd\" \"floor\": {} }".getBytes(StandardCharsets.UTF_8);
        byte[] large = new byte[(1 << 20) + 1];
        return List.of(
                post("analysisIncomplete", "analyseLayout", 200, ANALYSES, YAML, twoBays),
                post("analysisInadequate", "analyseLayout", 200, ANALYSES, YAML, overloaded),
                post("analysisUnstable", "analyseLayout", 200, ANALYSES, YAML, sillOut),
                post("analysisFull", "analyseLayout", 200, ANALYSES + "?detail=full", YAML, twoBays),
                post("planCheckIncomplete", "checkPlan", 200, CHECKS, YAML, twoBays),
                post("planCheckInadequate", "checkPlan", 200, CHECKS, YAML, overloaded),
                post("planCheckUnstable", "checkPlan", 200, CHECKS, YAML, sillOut),
                post("planCheckWorking", "checkPlan", 200, CHECKS + "?working=true", YAML, overloaded),
                post("planCheckRecords", "checkPlans", 200, BATCHES, LINES, contract.plan("planLines")),
                post("padSizingFound", "sizePads", 200, SIZINGS, YAML, contract.plan("sizingLoads")),
                post("padSizingNone", "sizePads", 200, SIZINGS, YAML, contract.plan("sizingPeat")),
                post("padSizingOfPlan", "sizePads", 200, SIZINGS, YAML, contract.plan("sizingPlan")),
                post("liftPlanned", "planLift", 200, LIFTS, YAML, raised),
                post("liftImpossible", "planLift", 200, LIFTS, YAML, weak),
                post("liftGoesOn", "planLift", 200, LIFTS, YAML, goesOn),
                get("checkList", "listChecks", 200, "/v1/checks"),
                get("checkPage", "explainCheck", 200, "/v1/checks/beam-bending"),
                get("catalogueIndex", "listCatalogue", 200, CATALOGUE),
                get("cataloguePage", "showCatalogue", 200, CATALOGUE + "/soils?table=ibc-1806.2&limit=2"),
                get("cataloguePageFound", "showCatalogue", 200, CATALOGUE + "/acme-screws?q=1-1/2"),
                get("problemPage", "explainProblem", 200, "/problems/faulty"),
                get("contractText", "getContract", 200, "/openapi.yaml").shown(Likeness.BEGINNING),
                get("servicePage", "showService", 200, "/"),
                page("frontPage", "showService", "/").with("Accept", "text/html"),
                page("docsPage", "showDocs", "/docs"),
                page("pageFileDemo", "getPageFile", "/pages/two-spans.yaml"),
                page("pageFileIcon", "getPageFile", "/pages/icon.svg"),
                page("pageFileScript", "getPageFile", "/pages/front.js"),
                page("pageFileStyle", "getPageFile", "/pages/page.css"),
                get("healthUp", "healthLive", 200, "/health/live"),
                get("healthUp", "healthReady", 200, "/health/ready"),
                get("metricsText", "showMetrics", 200, "/metrics").shown(Likeness.NAMES),
                post("problemUnreadable", "checkPlan", 400, CHECKS, JSON, syntax),
                post("problemUnreadableEncoding", "checkPlan", 400, CHECKS, YAML, latin),
                get("problemUnreadableAddress", "explainCheck", 400, "/v1/checks/beam%2Fbending"),
                get("problemNotFound", "explainCheck", 404, "/v1/checks/beam-bendin"),
                get("problemPartNotFound", "showCatalogue", 404, CATALOGUE + "/soil"),
                get("problemFaultyPaging", "showCatalogue", 422, CATALOGUE + "/soils?limit=0"),
                get("problemMethodNotAllowed", "checkPlan", 405, CHECKS),
                get("problemNotAcceptable", "listChecks", 406, "/v1/checks").with("Accept", "application/xml"),
                post("problemTooLarge", "checkPlan", 413, CHECKS, JSON, large),
                post("problemUnsupportedMediaType", "checkPlan", 415, CHECKS, "text/csv", twoBays),
                post("problemFaulty", "checkPlan", 422, CHECKS, YAML, broken),
                post("problemFaultyParameter", "checkPlan", 422, CHECKS + "?units=metric", YAML, twoBays),
                get("problemUnauthorized", "checkPlan", 401, ExampleService.CLOSED),
                get("problemTooCostly", "checkPlan", 422, ExampleService.SLOW),
                get("problemInternalError", "checkPlan", 500, ExampleService.DEFECT)
                        .shown(Likeness.BUT_FOR_INSTANCE),
                get("problemUnavailable", "checkPlan", 503, ExampleService.OVERLOADED));
    }

    private static ExampleRequest page(String example, String operation, String address) {
        return get(example, operation, 200, address).shown(Likeness.BEGINNING);
    }

    /** A plan with a passage changed that it holds once. */
    private static byte[] changed(byte[] plan, String passage, String other, Charset charset) {
        String text = new String(plan, StandardCharsets.UTF_8);
        if (text.split(Pattern.quote(passage), -1).length != 2) {
            throw new IllegalStateException("The plan does not hold once: " + passage);
        }
        return text.replace(passage, other).getBytes(charset);
    }
}
