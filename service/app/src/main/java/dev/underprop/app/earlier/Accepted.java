package dev.underprop.app.earlier;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.app.report.BaselineLines;
import dev.underprop.app.report.Judgement.Spot;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.record.Findings;
import dev.underprop.wire.record.Outcome;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Findings that somebody has accepted, each of one plan, check and place and up to the ratio it had. A finding that is worse is not
 * covered; a check that was accepted as not made does not cover one that fails; nothing covers faults and plans that are unstable.
 */
final class Accepted {
    private final Map<String, Map<Spot, Line>> plans;
    private final Set<Line> met = new HashSet<>();
    private final Set<String> plansMet = new HashSet<>();

    /** One accepted finding; a ratio that is infinite stands for no capacity at all. */
    private record Line(String plan, Spot spot, boolean fails, double ratio) {}

    private Accepted(Map<String, Map<Spot, Line>> plans) {
        this.plans = plans;
    }

    static Accepted none() {
        return new Accepted(Map.of());
    }

    static Accepted read(String file) {
        Map<String, Map<Spot, Line>> plans = new LinkedHashMap<>();
        try (BufferedReader lines = Files.newBufferedReader(Path.of(file), StandardCharsets.UTF_8)) {
            String head = lines.readLine();
            if (head == null || !head.equals(BaselineLines.HEAD)) {
                throw new IOException("it does not begin as a list of accepted findings does");
            }
            for (String text = lines.readLine(); text != null; text = lines.readLine()) {
                Line line = line(text);
                plans.computeIfAbsent(line.plan(), plan -> new LinkedHashMap<>())
                        .put(line.spot(), line);
            }
            return new Accepted(plans);
        } catch (IOException | IllegalArgumentException e) {
            throw EarlierResults.unreadable("list of accepted findings", file, e);
        }
    }

    private static Line line(String text) {
        JsonNode node = Documents.read(text.getBytes(StandardCharsets.UTF_8), JsonNode.class);
        boolean whole = node.path("plan").isTextual()
                && node.path("check").isTextual()
                && node.path("place").isTextual();
        String verdict = node.path("verdict").asText();
        if (!whole || !(verdict.equals("FAIL") || verdict.equals("NOT_CHECKED"))) {
            throw new IllegalArgumentException("a line is not an accepted finding: " + text);
        }
        return new Line(
                node.path("plan").asText(),
                new Spot(node.path("check").asText(), node.path("place").asText()),
                verdict.equals("FAIL"),
                node.path("ratio").asDouble(Double.POSITIVE_INFINITY));
    }

    /** The findings of an outcome that are covered. */
    Set<Spot> covers(Outcome outcome) {
        Map<Spot, Line> lines = plans.getOrDefault(outcome.key(), Map.of());
        if (lines.isEmpty()
                || !(outcome instanceof Outcome.Judged judged)
                || judged.result().getVerdict() == PlanVerdict.UNSTABLE) {
            return Set.of();
        }
        Set<Spot> covered = new HashSet<>();
        for (CheckResult check : judged.result().getChecks()) {
            Line line = lines.get(Spot.of(check));
            if (line != null && Findings.is(check) && covers(line, check)) {
                covered.add(line.spot());
            }
        }
        return covered;
    }

    private static boolean covers(Line line, CheckResult check) {
        if (!Findings.fails(check)) {
            return true;
        }
        return line.fails() && Findings.ratio(check) <= line.ratio();
    }

    /** Notes which accepted findings are still there, better or worse. */
    void met(Outcome outcome) {
        Map<Spot, Line> lines = plans.getOrDefault(outcome.key(), Map.of());
        if (!lines.isEmpty()) {
            plansMet.add(outcome.key());
        }
        if (outcome instanceof Outcome.Judged judged && !lines.isEmpty()) {
            for (CheckResult check : judged.result().getChecks()) {
                Line line = lines.get(Spot.of(check));
                if (line != null && Findings.is(check)) {
                    met.add(line);
                }
            }
        }
    }

    /** Accepted findings that were not met, told for the plans that were. */
    List<String> stale() {
        List<String> remarks = new ArrayList<>();
        List<String> stale = plans.entrySet().stream()
                .filter(entry -> plansMet.contains(entry.getKey()))
                .flatMap(entry -> entry.getValue().values().stream())
                .filter(line -> !met.contains(line))
                .map(line -> line.plan() + ", " + line.spot().check() + ", "
                        + line.spot().place())
                .toList();
        remarks.addAll(EarlierResults.listed(
                stale,
                "accepted finding is not there any more; take it off the list",
                "accepted findings are not there any more; take them off the list"));
        List<String> missing =
                plans.keySet().stream().filter(plan -> !plansMet.contains(plan)).toList();
        remarks.addAll(EarlierResults.listed(
                missing, "plan with accepted findings was not met", "plans with accepted findings were not met"));
        return remarks;
    }
}
