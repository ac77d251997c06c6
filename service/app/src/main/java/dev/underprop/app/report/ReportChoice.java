package dev.underprop.app.report;

import java.util.List;

/**
 * A report that was asked for.
 *
 * @param kind one of {@link #KINDS}
 * @param file where it goes; {@code -} is the standard output
 */
public record ReportChoice(String kind, String file) {
    /** The kinds of report. */
    public static final List<String> KINDS =
            List.of("text", "json", "ndjson", "csv", "junit", "sarif", "markdown", "html", "baseline");

    /**
     * Reads {@code KIND} or {@code KIND:FILE}.
     *
     * @throws IllegalArgumentException when it is neither
     */
    public static ReportChoice of(String text) {
        int colon = text.indexOf(':');
        String kind = colon < 0 ? text : text.substring(0, colon);
        String file = colon < 0 ? Sink.STANDARD_OUTPUT : text.substring(colon + 1);
        if (!KINDS.contains(kind) || file.isEmpty()) {
            throw new IllegalArgumentException("A report is written as KIND or KIND:FILE, where KIND is one of "
                    + String.join(", ", KINDS) + "; not as " + text + ".");
        }
        return new ReportChoice(kind, file);
    }

    /** True when the report takes the standard output. */
    public boolean standard() {
        return file.equals(Sink.STANDARD_OUTPUT);
    }

    /** True when the report points at lines of plans. */
    public boolean wantsLines() {
        return kind.equals("sarif");
    }

    /** True when the report, where records are brief, tells nothing of a plan in words. */
    public boolean brief() {
        return List.of("json", "ndjson", "baseline").contains(kind);
    }

    /** Opens the report. */
    public Report open(ReportOptions options) {
        Sink sink = Sink.to(file);
        return switch (kind) {
            case "text" -> TextReport.to(sink, options.text());
            case "json" -> new JsonReport(sink, options.extent());
            case "ndjson" -> new NdjsonReport(sink, options.extent());
            case "csv" -> new CsvReport(sink);
            case "junit" -> new JunitReport(sink);
            case "sarif" -> new SarifReport(sink, options.most());
            case "markdown" -> new MarkdownReport(sink);
            case "baseline" -> new BaselineLines(sink);
            case "html" -> new HtmlReport(sink);
            default -> throw new IllegalStateException("no such kind of report: " + kind);
        };
    }
}
