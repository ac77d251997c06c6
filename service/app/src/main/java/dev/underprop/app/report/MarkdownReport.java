package dev.underprop.app.report;

import dev.underprop.api.model.PlanVerdict;
import java.util.Map;

/** A summary in Markdown: verdicts, checks that ask for something, the worst plans, plans that were not judged. */
final class MarkdownReport extends Overview {
    private static final int MOST = 25;

    MarkdownReport(Sink sink) {
        super(sink, MOST);
    }

    @Override
    String page(End end, Worst worst, RefusedList refused) {
        StringBuilder out = new StringBuilder("# Plans checked\n\n");
        if (!end.complete()) {
            out.append("**" + STOPPED + "**\n\n");
        }
        verdicts(out, end.tally());
        checks(out, end.tally());
        plans(out, worst);
        notJudged(out, refused);
        end.remarks().forEach(remark -> out.append(Markup.cell(remark)).append("\n\n"));
        out.append(AID).append(" Not checked is never a pass.\n");
        return out.toString();
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

    private static void plans(StringBuilder out, Worst worst) {
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

    private static void notJudged(StringBuilder out, RefusedList refused) {
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
}
