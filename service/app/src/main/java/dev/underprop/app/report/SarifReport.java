package dev.underprop.app.report;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.ProblemError;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.record.Findings;
import dev.underprop.wire.record.Outcome;
import dev.underprop.wire.tree.Place;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * SARIF 2.1.0 (OASIS, 2020): a result for each check that fails or was not made, and for each fault of a plan that was not judged.
 * Results are listed up to a number, since readers of the format refuse more; what is beyond is counted.
 */
final class SarifReport implements Report {
    private static final String HEAD = "{\n"
            + "\"$schema\": \"https://raw.githubusercontent.com/oasis-tcs/sarif-spec/master/Schemata/sarif-schema-2.1.0.json\",\n"
            + "\"version\": \"2.1.0\",\n\"runs\": [\n{\n\"results\": [\n";

    private final Sink sink;
    private final int most;
    private final SarifRules rules = new SarifRules();
    private int listed;
    private int beyond;

    SarifReport(Sink sink, int most) {
        this.sink = sink;
        this.most = most;
        sink.write(HEAD);
    }

    @Override
    public Runnable prepare(Judgement judgement) {
        List<byte[]> results = new ArrayList<>();
        if (judgement.outcome() instanceof Outcome.Judged judged) {
            for (CheckResult check : judged.result().getChecks()) {
                if (Findings.is(check)) {
                    results.add(Documents.json(finding(judged, check, judgement.accepts(check)), false));
                }
            }
        } else if (judgement.outcome() instanceof Outcome.Refused refused) {
            refused.problem().getErrors().forEach(error -> results.add(Documents.json(fault(refused, error), false)));
            if (refused.problem().getErrors().isEmpty()) {
                results.add(Documents.json(defect(refused), false));
            }
        }
        return () -> results.forEach(this::write);
    }

    private void write(byte[] result) {
        if (listed >= most) {
            beyond++;
            return;
        }
        sink.write(listed == 0 ? "" : ",\n");
        // Without the end of line that a document has.
        sink.write(result, result.length - 1);
        listed++;
    }

    private Map<String, Object> finding(Outcome.Judged judged, CheckResult check, boolean accepted) {
        Map<String, Object> result = result(
                check.getCheck(),
                Findings.fails(check) ? "error" : "warning",
                judged.key() + ", " + check.getPlace() + ": " + check.getMessage(),
                SarifPlaces.location(
                        judged.name(),
                        judged.lines().getOrDefault(check.getPlace(), SarifPlaces.START),
                        check.getPlace()),
                SarifPlaces.fingerprint(judged.key(), check.getCheck(), check.getPlace()));
        if (accepted) {
            result.put(
                    "suppressions",
                    List.of(Map.of("kind", "external", "justification", "on the list of accepted findings")));
        }
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("verdict", check.getVerdict());
        Double ratio = check.getRatio();
        if (ratio != null) {
            properties.put("ratio", ratio);
        }
        result.put("properties", properties);
        return result;
    }

    private Map<String, Object> fault(Outcome.Refused refused, ProblemError error) {
        Integer line = error.getLine();
        Integer column = error.getColumn();
        Place place = line == null || column == null ? SarifPlaces.START : new Place(line, column);
        Map<String, Object> result = result(
                refused.problem().getType().replace("/problems/", ""),
                "error",
                refused.key() + ": " + ProblemText.words(error),
                SarifPlaces.location(refused.name(), place, error.getPointer()),
                SarifPlaces.fingerprint(refused.key(), error.getCode(), error.getPointer()));
        result.put("properties", Map.of("code", error.getCode()));
        return result;
    }

    private Map<String, Object> defect(Outcome.Refused refused) {
        return result(
                refused.problem().getType().replace("/problems/", ""),
                "error",
                refused.key() + ": " + refused.problem().getDetail(),
                SarifPlaces.location(refused.name(), SarifPlaces.START, ""),
                SarifPlaces.fingerprint(refused.key(), refused.problem().getType(), ""));
    }

    private Map<String, Object> result(String rule, String level, String message, Object location, String fingerprint) {
        Map<String, Object> result = new LinkedHashMap<>();
        result.put("ruleId", rule);
        result.put("ruleIndex", rules.index(rule));
        result.put("level", level);
        result.put("message", Map.of("text", message));
        result.put("locations", List.of(location));
        result.put("partialFingerprints", Map.of("planCheckPlace/v1", fingerprint));
        return result;
    }

    @Override
    public void complete(End end) {
        Map<String, Object> invocation = new LinkedHashMap<>();
        invocation.put("executionSuccessful", end.complete());
        if (beyond > 0) {
            invocation.put(
                    "toolExecutionNotifications", List.of(notification(beyond + " more findings are not listed.")));
        }
        Map<String, Object> counts = new LinkedHashMap<>();
        counts.put("listed", listed);
        counts.put("notListed", beyond);
        counts.put("plans", end.tally().plans());
        sink.write("\n],\n\"tool\": ");
        sink.write(json(rules.tool()));
        sink.write(",\n\"columnKind\": \"unicodeCodePoints\",\n\"invocations\": [\n");
        sink.write(json(invocation));
        sink.write("\n],\n\"properties\": ");
        sink.write(json(counts));
        sink.write("\n}\n]\n}\n");
        if (end.complete()) {
            sink.complete();
        }
    }

    private static Map<String, Object> notification(String text) {
        Map<String, Object> notification = new LinkedHashMap<>();
        notification.put("level", "warning");
        notification.put("message", Map.of("text", text));
        return notification;
    }

    private static String json(Object model) {
        return new String(Documents.json(model, false), StandardCharsets.UTF_8).strip();
    }

    @Override
    public void close() {
        sink.close();
    }
}
