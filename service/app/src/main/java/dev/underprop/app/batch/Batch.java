package dev.underprop.app.batch;

import dev.underprop.app.report.End;
import dev.underprop.app.report.Judgement;
import dev.underprop.app.report.Outcome;
import dev.underprop.app.report.Report;
import dev.underprop.app.report.ReportChoice;
import dev.underprop.app.report.Tally;
import dev.underprop.app.report.TextReport;
import dev.underprop.app.source.Entry;
import dev.underprop.app.source.EntryName;
import dev.underprop.app.source.Sources;
import dev.underprop.app.source.StandardInput;
import dev.underprop.wire.door.PlanDoor;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Checks many plans; what is wrong with one never stops the others. */
public final class Batch {
    /** Exit status: every plan is adequate, or bad only in ways that were accepted. */
    public static final int ADEQUATE = 0;

    /** Exit status: some plan is inadequate, incomplete or unstable. */
    public static final int NOT_ADEQUATE = 1;

    /** Exit status: the job could not be done. */
    public static final int NOT_DONE = 2;

    private final BatchSettings settings;
    private final PlanJudge judge;
    private final SeenKeys keys = new SeenKeys();
    private final Tally tally = new Tally();
    private final List<Report> reports = new ArrayList<>();
    private int status = ADEQUATE;

    /** A batch, to be run once. */
    public Batch(BatchSettings settings) {
        Quiet.logging();
        this.settings = settings;
        this.judge = new PlanJudge(new PlanDoor(), settings.options(), settings.wantsLines());
    }

    /** Checks the plans that paths lead to and returns the exit status. */
    public int run(List<String> paths) {
        try {
            open();
            judgeAll(paths);
            End end = new End(tally, true, List.of());
            reports.forEach(report -> report.complete(end));
            if (tally.plans() == 0 && !settings.allowEmpty()) {
                return refused("nothing to check was found; --allow-empty says that this is as it should be.");
            }
            return status;
        } catch (UncheckedIOException e) {
            return refused(String.valueOf(e.getMessage()));
        } finally {
            reports.forEach(Report::close);
        }
    }

    private static int refused(String why) {
        System.err.println("underprop check: " + why);
        return NOT_DONE;
    }

    /** Opened one by one, so that those that are open are closed when the next cannot be. */
    private void open() {
        TextReport.Level level = settings.reporting().text();
        reports.add(settings.machine() ? TextReport.error(level) : TextReport.standard(level));
        for (ReportChoice choice : settings.reports()) {
            reports.add(choice.open(settings.reporting()));
        }
    }

    private void judgeAll(List<String> paths) {
        StandardInput input = new StandardInput(Sources.standardInput(), settings.standardInput());
        try (Sources sources = new Sources(paths, settings.selection(), settings.allowEmpty(), input);
                OrderedWork work = new OrderedWork(settings.workers())) {
            work.run(sources, this::judged, this::take, () -> false);
        }
    }

    /** A plan that was judged, rendered for every report. */
    private record Ready(Judgement judgement, List<Runnable> parts) {}

    private Ready judged(Entry entry) {
        return ready(Judgement.of(judge.judge(entry)));
    }

    private Ready ready(Judgement judgement) {
        return new Ready(
                judgement,
                reports.stream().map(report -> report.prepare(judgement)).toList());
    }

    /** Takes a plan in the order of the input. */
    private void take(Ready ready) {
        Outcome outcome = ready.judgement().outcome();
        Optional<EntryName> before = keys.add(outcome.key(), outcome.name());
        Ready unique = before.map(first -> ready(Judgement.of(PlanJudge.repeated(outcome, first.key()))))
                .orElse(ready);
        tally.add(unique.judgement());
        status = Math.max(status, status(unique.judgement()));
        unique.parts().forEach(Runnable::run);
    }

    private int status(Judgement judgement) {
        if (judgement.outcome() instanceof Outcome.Refused) {
            return NOT_DONE;
        }
        return settings.failOn().fails(judgement) ? NOT_ADEQUATE : ADEQUATE;
    }

    /** Writes a defect of ours with an id to be reported, and returns the id. */
    public static String reportDefect(Throwable failure, PrintWriter err) {
        String id = "urn:uuid:" + UUID.randomUUID();
        err.println("underprop: a defect of the program, id " + id + ". Please report it with what follows.");
        failure.printStackTrace(err);
        err.flush();
        return id;
    }
}
