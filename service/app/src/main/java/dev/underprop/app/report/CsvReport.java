package dev.underprop.app.report;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.api.model.Problem;
import dev.underprop.api.model.ProblemError;
import dev.underprop.api.model.Quantity;
import dev.underprop.wire.quantity.ValueWriter;
import dev.underprop.wire.record.Findings;
import dev.underprop.wire.record.Outcome;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A row a check, by RFC 4180; a plan that was not judged has a row a fault. */
final class CsvReport implements Report {
    private static final String HEAD =
            "path,line,id,plan_verdict,check,place,verdict,demand,capacity,unit,ratio,situation,combination,accepted,message\r\n";

    private final Sink sink;

    CsvReport(Sink sink) {
        this.sink = sink;
        sink.write(HEAD);
    }

    @Override
    public Runnable prepare(Judgement judgement) {
        StringBuilder rows = new StringBuilder();
        if (judgement.outcome() instanceof Outcome.Judged judged) {
            PlanCheck result = judged.result();
            result.getChecks().forEach(check -> row(rows, check(judgement, result, check)));
        } else if (judgement.outcome() instanceof Outcome.Refused refused) {
            Problem problem = refused.problem();
            problem.getErrors().forEach(error -> row(rows, fault(refused, error)));
            if (problem.getErrors().isEmpty()) {
                row(
                        rows,
                        fault(refused, new ProblemError().code("internal-error").detail(problem.getTitle())));
            }
        }
        return () -> sink.write(rows.toString());
    }

    private static List<String> check(Judgement judgement, PlanCheck result, CheckResult check) {
        List<String> cells = start(judgement.outcome());
        Quantity demand = check.getDemand();
        Quantity capacity = check.getCapacity();
        Double ratio = check.getRatio();
        cells.add(result.getVerdict().getValue());
        cells.add(check.getCheck());
        cells.add(check.getPlace());
        cells.add(check.getVerdict().getValue());
        cells.add(demand == null ? "" : ValueWriter.nine(demand.getValue()));
        cells.add(capacity == null ? capacityNone(check) : ValueWriter.nine(capacity.getValue()));
        cells.add(demand == null ? "" : demand.getUnit());
        cells.add(ratio == null ? "" : ValueWriter.nine(ratio));
        cells.add(orEmpty(check.getSituation()));
        cells.add(orEmpty(check.getCombination()));
        cells.add(Findings.is(check) ? Boolean.toString(judgement.accepts(check)) : "");
        cells.add(check.getMessage());
        return cells;
    }

    private static String capacityNone(CheckResult check) {
        return Boolean.TRUE.equals(check.getCapacityNone()) ? "none" : "";
    }

    private static List<String> fault(Outcome.Refused refused, ProblemError error) {
        List<String> cells = start(refused);
        cells.addAll(
                List.of("NOT_JUDGED", error.getCode(), error.getPointer() == null ? "" : error.getPointer(), "FAULT"));
        cells.addAll(List.of("", "", "", "", "", "", "false", ProblemText.words(error)));
        return cells;
    }

    private static List<String> start(Outcome outcome) {
        int line = outcome.name().line();
        return new ArrayList<>(List.of(outcome.name().path(), line == 0 ? "" : Integer.toString(line), outcome.key()));
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static void row(StringBuilder out, List<String> cells) {
        String before = "";
        for (String cell : cells) {
            out.append(before).append(quoted(harmless(cell)));
            before = ",";
        }
        out.append("\r\n");
    }

    /** A cell that a spreadsheet would take for a formula is given a mark before it; a plain number is left. */
    private static String harmless(String cell) {
        boolean formula = !cell.isEmpty() && "=+-@\t\r".indexOf(cell.charAt(0)) >= 0;
        return formula && !cell.matches("-[0-9.eE-]+") ? "'" + cell : cell;
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    @Override
    public void complete(End end) {
        if (end.complete()) {
            sink.complete();
        }
    }

    @Override
    public void close() {
        sink.close();
    }
}
