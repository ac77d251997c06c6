package dev.underprop.app.report;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.CheckVerdict;
import dev.underprop.api.model.Citation;
import dev.underprop.api.model.Quantity;
import dev.underprop.wire.record.Findings;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A check that was made, in words: ratio and verdict, what and where, under what, by which clause. */
final class CheckText {
    private static final MathContext SHOWN = new MathContext(4);
    private static final int INDENT = 18;

    private final Paint paint;

    CheckText(Paint paint) {
        this.paint = paint;
    }

    String of(CheckResult check) {
        boolean fails = check.getVerdict() == CheckVerdict.FAIL;
        String verdict = fails ? paint.danger("FAIL") : paint.good("PASS");
        String what = fails ? check.getMessage() : check.getTitle() + ", " + place(check) + ": " + numbers(check);
        return String.format(Locale.ROOT, "    %7s  %s ", ratio(check, fails), verdict)
                + indented(what).substring(INDENT)
                + indented(where(check) + " " + cited(check.getCitation()));
    }

    private static String indented(String words) {
        return Lines.wrapped(" ".repeat(INDENT), INDENT, words);
    }

    /** Three places; a check that just fails is never shown as 1.000. */
    private static String ratio(CheckResult check, boolean fails) {
        Double ratio = check.getRatio();
        if (ratio == null) {
            return "-";
        }
        String shown = String.format(Locale.ROOT, "%.3f", Findings.written(ratio));
        return fails && shown.equals("1.000") ? "> 1" : shown;
    }

    static String place(CheckResult check) {
        Quantity at = check.getAt();
        return check.getPlace() + (at == null ? "" : " at " + shown(at));
    }

    private static String numbers(CheckResult check) {
        Quantity demand = check.getDemand();
        Quantity capacity = check.getCapacity();
        return demand == null || capacity == null
                ? check.getMessage()
                : shown(demand) + " against " + shown(capacity) + ".";
    }

    static String where(CheckResult check) {
        List<String> parts = new ArrayList<>();
        String situation = check.getSituation();
        if (situation != null) {
            parts.add("Situation " + situation);
        }
        String combination = check.getCombination();
        if (combination != null) {
            parts.add(combination);
        }
        String pattern = check.getPattern();
        if (pattern != null) {
            parts.add(pattern);
        }
        Quantity at = check.getAt();
        if (check.getVerdict() == CheckVerdict.FAIL && at != null) {
            parts.add("at " + shown(at));
        }
        return String.join(", ", parts);
    }

    static String cited(Citation citation) {
        Set<String> parts = new LinkedHashSet<>();
        if (!citation.getStanding().startsWith(citation.getDocument())) {
            parts.add(citation.getDocument());
        }
        parts.addAll(List.of(citation.getEdition(), citation.getLocator(), citation.getStanding()));
        parts.removeAll(Set.of("none", ""));
        return "[" + String.join(", ", parts) + "]";
    }

    static String shown(Quantity quantity) {
        BigDecimal value =
                BigDecimal.valueOf(Findings.written(quantity.getValue())).round(SHOWN);
        String text = value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
        return text + " " + quantity.getUnit();
    }
}
