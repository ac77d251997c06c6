package dev.underprop.app.report;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.wire.record.Findings;
import dev.underprop.wire.record.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/** The worst of many plans, up to a number; the others are counted. */
final class Worst {
    /** Findings told of one plan. */
    private static final int MOST_FINDINGS = 40;

    /**
     * What is kept of a plan.
     *
     * @param order its place in the input
     * @param judged key, place and verdict
     * @param severity how far its worst check is beyond the limit
     * @param failed checks that fail
     * @param notChecked checks that were not made
     * @param findings findings in words, at most a few dozen
     */
    record Row(int order, Head judged, double severity, int failed, int notChecked, List<String> findings) {}

    /**
     * What a plan is known by.
     *
     * @param key its key
     * @param path where it stands
     * @param title its title, or the empty text
     * @param verdict its verdict
     * @param headline its verdict in words
     */
    record Head(String key, String path, String title, PlanVerdict verdict, String headline) {}

    private static final Comparator<Row> WORST_FIRST = Comparator.comparing(
                    (Row row) -> row.judged().verdict())
            .thenComparing(Comparator.comparingDouble(Row::severity).reversed())
            .thenComparing(Comparator.comparingInt(Row::notChecked).reversed())
            .thenComparingInt(Row::order);

    private final int most;
    private final TreeSet<Row> rows = new TreeSet<>(WORST_FIRST);
    private int seen;

    Worst(int most) {
        this.most = most;
    }

    /** What there is to keep of a plan, but for its place in the input. */
    static Row row(Judgement judgement, Outcome.Judged judged) {
        List<CheckResult> checks = judged.result().getChecks();
        List<CheckResult> findings = checks.stream().filter(Findings::is).toList();
        int failed = (int) findings.stream().filter(Findings::fails).count();
        List<String> words = new ArrayList<>();
        findings.stream()
                .sorted(Comparator.comparing(CheckResult::getVerdict)
                        .thenComparing(
                                Comparator.comparingDouble(Findings::severity).reversed()))
                .limit(MOST_FINDINGS)
                .forEach(check -> words.add(words(check) + (judgement.accepts(check) ? " (accepted)" : "")));
        if (findings.size() > MOST_FINDINGS) {
            words.add("and " + (findings.size() - MOST_FINDINGS) + " more");
        }
        String title = judged.result().getTitle();
        return new Row(
                0,
                new Head(
                        judged.key(),
                        judged.name().key(),
                        title == null ? "" : title,
                        judged.result().getVerdict(),
                        judged.result().getHeadline()),
                Findings.worst(checks).map(Findings::severity).orElse(0.0),
                failed,
                findings.size() - failed,
                List.copyOf(words));
    }

    private static String words(CheckResult check) {
        return check.getVerdict() + " " + check.getCheck() + ", " + check.getPlace() + ": " + check.getMessage();
    }

    /** Takes the next plan. */
    void add(Row row) {
        rows.add(new Row(seen++, row.judged(), row.severity(), row.failed(), row.notChecked(), row.findings()));
        if (rows.size() > most) {
            rows.pollLast();
        }
    }

    /** The worst plans, the worst first. */
    List<Row> rows() {
        return List.copyOf(rows);
    }

    /** Plans that are not listed. */
    int left() {
        return seen - rows.size();
    }
}
