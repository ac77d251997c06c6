package dev.underprop.app.report;

import dev.underprop.api.model.PlanVerdict;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** An overview as one HTML file that asks for nothing from outside and runs no script. */
final class HtmlReport extends Overview {
    private static final int MOST = 500;

    HtmlReport(Sink sink) {
        super(sink, MOST);
    }

    @Override
    String page(End end, Worst worst, RefusedList refused) {
        StringBuilder out = new StringBuilder(head());
        if (!end.complete()) {
            out.append("<p class=\"stopped\">" + STOPPED + "</p>\n");
        }
        verdicts(out, end.tally());
        end.remarks()
                .forEach(remark -> out.append("<p>").append(Markup.text(remark)).append("</p>\n"));
        notJudged(out, refused);
        plans(out, worst);
        checks(out, end.tally());
        out.append("</main>\n</body>\n</html>\n");
        return out.toString();
    }

    private static String head() {
        return """
                <!DOCTYPE html>
                <html lang="en">
                <head>
                <meta charset="utf-8">
                <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
                <meta name="viewport" content="width=device-width, initial-scale=1">
                <title>Plans checked</title>
                <style>
                """ + style() + """
                </style>
                </head>
                <body>
                <main>
                <h1>Plans checked</h1>
                <p class="caution">""" + AID + """
                 Nobody under or above \
                the bay while a screw is turned or a bearing is taken out. Not checked is never a pass.</p>
                """;
    }

    private static String style() {
        try (InputStream in = HtmlReport.class.getResourceAsStream("overview.css")) {
            if (in == null) {
                throw new IllegalStateException("overview.css is missing from the jar");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void verdicts(StringBuilder out, Tally tally) {
        out.append("<div class=\"counts\">\n");
        count(out, "all", "plans", tally.plans(), tally.plans());
        for (PlanVerdict verdict : PlanVerdict.values()) {
            String name = verdict.getValue().toLowerCase(Locale.ROOT);
            if (tally.count(verdict) > 0 || verdict == PlanVerdict.ADEQUATE) {
                count(out, name, name, tally.count(verdict), tally.plans());
            }
        }
        count(out, "refused", "not judged", tally.refused(), tally.plans());
        out.append("</div>\n");
    }

    private static void count(StringBuilder out, String kind, String words, int count, int all) {
        String share = all == 0 ? "0" : String.format(Locale.ROOT, "%.1f", 100.0 * count / all);
        out.append("<div class=\"count ")
                .append(kind)
                .append("\"><b>")
                .append(count)
                .append("</b> ")
                .append(words);
        out.append("<span class=\"bar\"><span style=\"width:").append(share).append("%\"></span></span></div>\n");
    }

    private static void notJudged(StringBuilder out, RefusedList refused) {
        if (refused.rows().isEmpty()) {
            return;
        }
        out.append("<h2>Not judged</h2>\n<table>\n<tr><th>where</th><th>why</th></tr>\n");
        for (RefusedList.Row row : refused.rows()) {
            out.append("<tr><td class=\"path\">")
                    .append(Markup.text(row.path()))
                    .append("</td><td>");
            list(out, row.faults());
            out.append("</td></tr>\n");
        }
        out.append("</table>\n");
        left(out, refused.left());
    }

    private static void plans(StringBuilder out, Worst worst) {
        if (worst.rows().isEmpty()) {
            return;
        }
        out.append("<h2>Plans, the worst first</h2>\n<table>\n");
        out.append(
                "<tr><th>verdict</th><th>plan</th><th class=\"number\">fails</th><th class=\"number\">not checked</th></tr>\n");
        worst.rows().forEach(row -> plan(out, row));
        out.append("</table>\n");
        left(out, worst.left());
    }

    private static void plan(StringBuilder out, Worst.Row row) {
        Worst.Head head = row.judged();
        String kind = head.verdict().getValue().toLowerCase(Locale.ROOT);
        out.append("<tr><td><span class=\"verdict ").append(kind).append("\">").append(head.verdict());
        out.append("</span></td><td><b>")
                .append(Markup.text(head.key()))
                .append("</b> ")
                .append(Markup.text(head.title()));
        out.append("<div class=\"path\">").append(Markup.text(head.path())).append("</div>");
        out.append("<div>").append(Markup.text(head.headline())).append("</div>");
        if (!row.findings().isEmpty()) {
            out.append("<details><summary>findings</summary>");
            list(out, row.findings());
            out.append("</details>");
        }
        out.append("</td><td class=\"number\">").append(row.failed());
        out.append("</td><td class=\"number\">").append(row.notChecked()).append("</td></tr>\n");
    }

    private static void checks(StringBuilder out, Tally tally) {
        if (tally.byCheck().isEmpty()) {
            return;
        }
        out.append(
                "<h2>Checks that ask for something</h2>\n<table>\n<tr><th>check</th><th class=\"number\">fails</th>");
        out.append("<th class=\"number\">not checked</th><th class=\"number\">accepted</th></tr>\n");
        for (Map.Entry<String, Tally.Findings> entry : tally.byCheck().entrySet()) {
            Tally.Findings findings = entry.getValue();
            out.append("<tr><td>")
                    .append(Markup.text(findings.title()))
                    .append(" <code>")
                    .append(entry.getKey());
            out.append("</code></td><td class=\"number\">").append(findings.failed());
            out.append("</td><td class=\"number\">").append(findings.notChecked());
            out.append("</td><td class=\"number\">").append(findings.accepted()).append("</td></tr>\n");
        }
        out.append("</table>\n");
    }

    private static void list(StringBuilder out, List<String> items) {
        out.append("<ul>");
        items.forEach(item -> out.append("<li>").append(Markup.text(item)).append("</li>"));
        out.append("</ul>");
    }

    private static void left(StringBuilder out, int count) {
        if (count > 0) {
            out.append("<p>").append(count).append(" more are not listed.</p>\n");
        }
    }
}
