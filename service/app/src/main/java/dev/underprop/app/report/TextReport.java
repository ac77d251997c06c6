package dev.underprop.app.report;

import dev.underprop.api.model.PlanVerdict;
import dev.underprop.wire.record.Findings;
import dev.underprop.wire.record.Outcome;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What a person reads: each plan as it is judged, then the sum and, once, the caution. */
public final class TextReport implements Report {

    /** How much is said of each plan. */
    public enum Level {
        /** Everything worth knowing. */
        FULL,
        /** A line or two for each plan that is not adequate, and every fault. */
        LINES,
        /** Nothing but the sum, and every fault. */
        SUM
    }

    private final Sink sink;
    private final Paint paint;
    private final Level level;
    private final Runnable before;
    private final Set<String> cautions = new LinkedHashSet<>();

    private TextReport(Sink sink, Paint paint, Level level, Runnable before) {
        this.sink = sink;
        this.paint = paint;
        this.level = level;
        this.before = before;
    }

    /**
     * To the standard output, in colour on a terminal.
     *
     * @param level how much is said
     * @param before what is done before anything is said of a plan
     */
    public static TextReport standard(Level level, Runnable before) {
        return new TextReport(Sink.to(Sink.STANDARD_OUTPUT), Paint.forTerminal(), level, before);
    }

    /**
     * To the error output, since the other belongs to a program.
     *
     * @param level how much is said
     * @param before what is done before anything is said of a plan
     */
    public static TextReport error(Level level, Runnable before) {
        return new TextReport(Sink.error(), new Paint(false), level, before);
    }

    static TextReport to(Sink sink, Level level) {
        return new TextReport(sink, new Paint(false), level, () -> {});
    }

    @Override
    public Runnable prepare(Judgement judgement) {
        String text = text(judgement);
        return () -> {
            if (judgement.outcome() instanceof Outcome.Judged judged) {
                cautions.addAll(judged.result().getCautions());
            }
            if (!text.isEmpty()) {
                before.run();
                sink.write(text);
                sink.flush();
            }
        };
    }

    private String text(Judgement judgement) {
        if (judgement.outcome() instanceof Outcome.Refused refused) {
            return new ProblemText(paint).of(refused) + "\n";
        }
        Outcome.Judged judged = (Outcome.Judged) judgement.outcome();
        String change = judgement
                .change()
                .map(it -> Lines.wrapped("  Changed: ", 4, Changes.words(it)))
                .orElse("");
        return switch (level) {
            case FULL -> new PlanText(paint).of(judged) + accepted(judgement, judged) + change + "\n";
            case LINES ->
                judged.adequate() && change.isEmpty()
                        ? ""
                        : new PlanText(paint).line(judged) + counted(judgement, judged) + change;
            case SUM -> "";
        };
    }

    private static String counted(Judgement judgement, Outcome.Judged judged) {
        long all = judged.result().getChecks().stream().filter(Findings::is).count();
        long accepted =
                judged.result().getChecks().stream().filter(judgement::accepts).count();
        return accepted == 0
                ? ""
                : "  Accepted: " + (accepted == all ? "all" : accepted + " of") + " " + all + " findings.\n";
    }

    private static String accepted(Judgement judgement, Outcome.Judged judged) {
        List<String> accepted = judged.result().getChecks().stream()
                .filter(judgement::accepts)
                .map(check -> check.getTitle() + " (" + check.getPlace() + ")")
                .toList();
        return accepted.isEmpty() ? "" : Lines.wrapped("  Accepted: ", 4, String.join("; ", accepted) + ".");
    }

    @Override
    public void complete(End end) {
        Tally tally = end.tally();
        String sum = tally.plans() == 1 ? "1 plan" : tally.plans() + " plans";
        sink.write(paint.strong(sum) + (tally.plans() == 0 ? "" : ": " + String.join(", ", parts(tally))) + ".\n");
        if (tally.accepted() > 0) {
            sink.write(tally.accepted() + " findings are accepted, " + tally.open() + " are open.\n");
        }
        tally.changes().forEach((what, count) -> sink.write(Changes.sum(what, count) + "\n"));
        end.remarks().forEach(remark -> sink.write(Lines.wrapped("", 2, remark)));
        cautions.forEach(caution -> sink.write(Lines.wrapped("", 0, caution)));
        sink.complete();
    }

    private static List<String> parts(Tally tally) {
        List<String> parts = new ArrayList<>();
        for (PlanVerdict verdict : PlanVerdict.values()) {
            if (tally.count(verdict) > 0) {
                parts.add(tally.count(verdict) + " " + verdict.getValue().toLowerCase(Locale.ROOT));
            }
        }
        if (tally.refused() > 0) {
            parts.add(tally.refused() + " not judged");
        }
        return parts;
    }

    @Override
    public void close() {
        sink.close();
    }
}
