package dev.underprop.app.report;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.Citation;
import dev.underprop.api.model.Working;
import dev.underprop.api.model.WorkingLine;
import dev.underprop.api.model.WorkingSource;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;

/** The working of checks in words: a line a number, symbol, value and unit in columns, then how it follows and what it is. */
final class WorkingText {
    private static final MathContext SHOWN = new MathContext(6);

    private static final int INDENT = 34;

    private WorkingText() {}

    /** The working of all checks that have one; empty where none has. */
    static String of(List<CheckResult> checks) {
        StringBuilder out = new StringBuilder();
        for (CheckResult check : checks) {
            Working working = check.getWorking();
            if (working != null) {
                out.append(heading(check)).append(of(working));
            }
        }
        return out.toString();
    }

    private static String heading(CheckResult check) {
        String where = CheckText.where(check);
        return Lines.wrapped("    ", 6, check.getTitle() + ", " + CheckText.place(check) + ": " + check.getVerdict())
                + Lines.wrapped(
                        "      ", 6, where + (where.isEmpty() ? "" : " ") + CheckText.cited(check.getCitation()));
    }

    private static String of(Working working) {
        StringBuilder out = new StringBuilder();
        List<WorkingLine> lines = working.getLines();
        if (lines != null) {
            lines.forEach(line -> out.append(of(line)));
        }
        String note = working.getNote();
        return note == null ? out.toString() : out + Lines.wrapped("      ", 6, note);
    }

    private static String of(WorkingLine line) {
        String unit = line.getUnit().equals("1") ? "" : line.getUnit();
        String columns =
                String.format(Locale.ROOT, "      %-8s %11s %-6s ", line.getSymbol(), shown(line.getValue()), unit);
        String first = columns.length() <= INDENT ? columns : columns.stripTrailing() + " ";
        return Lines.wrapped(first, INDENT, words(line));
    }

    private static String words(WorkingLine line) {
        String formula = line.getFormula();
        Citation citation = line.getCitation();
        String from = line.getSource() == WorkingSource.PLAN
                ? " (plan)"
                : line.getSource() == WorkingSource.ANALYSIS ? " (analysis)" : "";
        return (formula == null ? "" : "= " + formula + "; ")
                + line.getMeaning()
                + from
                + (citation == null ? "" : " " + CheckText.cited(citation));
    }

    private static String shown(double value) {
        BigDecimal number = BigDecimal.valueOf(value).round(SHOWN);
        if (number.signum() == 0) {
            return "0";
        }
        BigDecimal plain = number.stripTrailingZeros();
        return plain.precision() - plain.scale() > 10 ? plain.toString() : plain.toPlainString();
    }
}
