package dev.underprop.app.report;

import dev.underprop.api.model.PlanVerdict;
import dev.underprop.wire.record.Outcome;
import java.util.Map;

/** A summary in Markdown: verdicts, checks that ask for something, the worst plans, plans that were not judged. */
final class MarkdownReport implements Report {
    private static final int MOST = 25;

    private final Sink sink;
    private final Worst worst = new Worst(MOST);
    private final RefusedList refused = new RefusedList(MOST);

    MarkdownReport(Sink sink) {
        this.sink = sink;
    }

    @Override
    public Runnable prepare(Judgement judgement) {
        if (judgement.outcome() instanceof Outcome.Judged judged) {
            Worst.Row row = Worst.row(judgement, judged);
            return () -> worst.add(row);
        }
        RefusedList.Row row = RefusedList.row((Outcome.Refused) judgement.outcome());
        return () -> refused.add(row);
    }

    @Override
    public void complete(End end) {
        StringBuilder out = new StringBuilder("# Plans checked\n\n");
        if (!end.complete()) {
            out.append("**The run was stopped: not every plan was reached.**\n\n");
        }
        verdicts(out, end.tally());
        checks(out, end.tally());
        plans(out);
        notJudged(out);
        end.remarks().forEach(remark -> out.append(Markup.cell(remark)).append("\n\n"));
        out.append(
                "A calculation aid. The local building code and a licensed engineer decide. Not checked is never a pass.\n");
        sink.write(out.toString());
        if (end.complete()) {
            sink.complete();
        }
    }

    private static void verdicts(StringBuilder out, Tally tally) {
        out.append("| verdict | plans |\n|---|---:|\n");
        for (PlanVerdict verdict : PlanVerdict.values()) {
            if (tally.count(verdict) > 0 || verdict == PlanVerdict.ADEQUATE) {
                out.append("| ")
                        .append(verdict.getValue())
                        .append(" | ")
                        .append(tally.count(verdict))
                        .append(" |\n");
            }
        }
        out.append("| not judged | ").append(tally.refused()).append(" |\n");
        out.append("| **all** | **").append(tally.plans()).append("** |\n\n");
    }

    private static void checks(StringBuilder out, Tally tally) {
        if (tally.byCheck().isEmpty()) {
            return;
        }
        out.append("## Checks\n\n| check | fails | not checked | accepted |\n|---|---:|---:|---:|\n");
        for (Map.Entry<String, Tally.Findings> entry : tally.byCheck().entrySet()) {
            Tally.Findings findings = entry.getValue();
            out.append("| ")
                    .append(Markup.cell(findings.title()))
                    .append(" (`")
                    .append(entry.getKey())
                    .append("`) | ");
            out.append(findings.failed())
                    .append(" | ")
                    .append(findings.notChecked())
                    .append(" | ");
            out.append(findings.accepted()).append(" |\n");
        }
        out.append('\n');
    }

    private void plans(StringBuilder out) {
        if (worst.rows().isEmpty()) {
            return;
        }
        out.append(
                "## Worst plans\n\n| plan | verdict | fails | not checked | in a sentence |\n|---|---|---:|---:|---|\n");
        for (Worst.Row row : worst.rows()) {
            out.append("| ")
                    .append(Markup.cell(row.judged().key()))
                    .append(" | ")
                    .append(row.judged().verdict());
            out.append(" | ")
                    .append(row.failed())
                    .append(" | ")
                    .append(row.notChecked())
                    .append(" | ");
            out.append(Markup.cell(row.judged().headline())).append(" |\n");
        }
        out.append(left(worst.left(), "more plans are not listed")).append('\n');
    }

    private void notJudged(StringBuilder out) {
        if (refused.rows().isEmpty()) {
            return;
        }
        out.append("## Not judged\n\n| where | why |\n|---|---|\n");
        for (RefusedList.Row row : refused.rows()) {
            out.append("| ").append(Markup.cell(row.path())).append(" | ");
            out.append(Markup.cell(String.join(" ", row.faults()))).append(" |\n");
        }
        out.append(left(refused.left(), "more are not listed")).append('\n');
    }

    private static String left(int count, String words) {
        return count == 0 ? "" : "\n" + count + " " + words + ".\n";
    }

    @Override
    public void close() {
        sink.close();
    }
}
