package dev.underprop.app.report;

import dev.underprop.api.model.Advisory;
import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.CheckVerdict;
import dev.underprop.api.model.HandCheck;
import dev.underprop.api.model.NotCheckedItem;
import dev.underprop.api.model.PadSizing;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.api.model.Severity;
import dev.underprop.api.model.SituationResult;
import dev.underprop.api.model.SituationState;
import dev.underprop.wire.record.Findings;
import dev.underprop.wire.record.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A judged plan in words: the verdict, what was not checked, the dangers, the worst checks, what is worth knowing, what was taken. */
final class PlanText {
    private static final int MOST_CHECKS = 5;

    /** Where words begin behind a verdict. */
    private static final int COLUMN = 12;

    private final Paint paint;

    PlanText(Paint paint) {
        this.paint = paint;
    }

    String of(Outcome.Judged judged) {
        PlanCheck result = judged.result();
        StringBuilder out = new StringBuilder(heading(judged));
        out.append(verdict(result.getVerdict())).append('\n');
        out.append(Lines.wrapped("  ", 2, result.getHeadline()));
        notChecked(out, result.getNotChecked());
        dangers(out, result.getAdvisories());
        worst(out, result.getChecks());
        result.getSituations().forEach(situation -> byHand(out, situation));
        working(out, result.getChecks());
        section(out, "Worth knowing", told(result.getAdvisories(), Severity.INFO));
        section(out, "Taken, since the plan does not say", result.getAssumptions());
        pads(out, result.getSizing());
        return out.toString();
    }

    /** The verdict, what the plan is known by, and the verdict in words, on a few lines. */
    String line(Outcome.Judged judged) {
        PlanVerdict verdict = judged.result().getVerdict();
        String words = words(judged) + ": " + judged.result().getHeadline();
        return verdict(verdict)
                + Lines.wrapped(" ".repeat(COLUMN), COLUMN, words)
                        .substring(verdict.getValue().length());
    }

    /** What the plan asks of pads, in short; the command pads tells it in whole. */
    private void pads(StringBuilder out, @Nullable PadSizing sizing) {
        if (sizing != null) {
            List<String> lines = new ArrayList<>();
            lines.add(sizing.getHeadline());
            sizing.getPosts().forEach(post -> lines.add(post.getPost() + ": " + post.getMessage()));
            section(out, "Pads asked for: " + sizing.getState().getValue(), lines);
        }
    }

    private String heading(Outcome.Judged judged) {
        return paint.strong(Lines.visible(words(judged))) + "\n";
    }

    private static String words(Outcome.Judged judged) {
        StringBuilder words = new StringBuilder(judged.key());
        String title = judged.result().getTitle();
        if (title != null) {
            words.append("  ").append(title);
        }
        if (!judged.key().equals(judged.name().key())) {
            words.append("  (").append(judged.name().key()).append(')');
        }
        return words.toString();
    }

    private String verdict(PlanVerdict verdict) {
        return switch (verdict) {
            case ADEQUATE -> paint.good("ADEQUATE");
            case INCOMPLETE -> paint.warning("INCOMPLETE");
            default -> paint.danger(verdict.getValue());
        };
    }

    private void notChecked(StringBuilder out, List<NotCheckedItem> items) {
        section(out, paint.warning("NOT CHECKED"), OpenQuestions.lines(items));
    }

    private void dangers(StringBuilder out, List<Advisory> advisories) {
        section(out, paint.danger("DANGER"), told(advisories, Severity.DANGER));
        section(out, paint.warning("WARNING"), told(advisories, Severity.WARNING));
    }

    private static List<String> told(List<Advisory> advisories, Severity severity) {
        List<String> lines = new ArrayList<>();
        for (Advisory advisory : advisories) {
            if (advisory.getSeverity() == severity) {
                String place = advisory.getPlace();
                lines.add((place == null ? "" : place + ": ") + advisory.getMessage() + " [" + advisory.getSource()
                        + "]");
            }
        }
        return lines;
    }

    private void worst(StringBuilder out, List<CheckResult> checks) {
        List<CheckResult> made = checks.stream()
                .filter(check -> check.getVerdict() == CheckVerdict.FAIL || check.getVerdict() == CheckVerdict.PASS)
                .sorted(Comparator.comparing(Findings::severity).reversed())
                .toList();
        if (made.isEmpty()) {
            return;
        }
        CheckText text = new CheckText(paint);
        int shown = Math.min(MOST_CHECKS, made.size());
        out.append("  ")
                .append(paint.strong("Worst checks"))
                .append(" (")
                .append(shown)
                .append(" of ")
                .append(made.size())
                .append(")\n");
        made.stream().limit(shown).forEach(check -> out.append(text.of(check)));
    }

    private static void working(StringBuilder out, List<CheckResult> checks) {
        String text = WorkingText.of(checks);
        if (!text.isEmpty()) {
            out.append("  Working\n").append(text);
        }
    }

    /** What stands in for the analysis where there is none, one line for each rule. */
    private void byHand(StringBuilder out, SituationResult situation) {
        if (situation.getState() == SituationState.UNSTABLE) {
            Map<String, List<String>> byRule = new LinkedHashMap<>();
            for (HandCheck hand : situation.getHandChecks()) {
                byRule.computeIfAbsent(hand.getRule(), rule -> new ArrayList<>())
                        .add(hand.getPlace() + " " + CheckText.shown(hand.getLoad()));
            }
            List<String> lines = new ArrayList<>();
            byRule.forEach((rule, loads) -> lines.add(rule + ": " + String.join(", ", loads) + "."));
            section(out, "By hand, in situation " + Lines.visible(situation.getName()), lines);
        }
    }

    private void section(StringBuilder out, String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            out.append("  ").append(heading).append('\n');
            lines.forEach(line -> out.append(Lines.wrapped("    - ", 6, line)));
        }
    }
}
