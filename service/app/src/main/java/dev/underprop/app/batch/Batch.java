package dev.underprop.app.batch;

import dev.underprop.app.earlier.Earlier;
import dev.underprop.app.report.End;
import dev.underprop.app.report.Judgement;
import dev.underprop.app.report.Report;
import dev.underprop.app.report.ReportChoice;
import dev.underprop.app.report.Tally;
import dev.underprop.app.report.TextReport;
import dev.underprop.app.source.Sources;
import dev.underprop.app.source.StandardInput;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.record.Outcome;
import dev.underprop.wire.record.Outcomes;
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

    /** Exit status: the run was told to stop. */
    public static final int STOPPED = 130;

    private final BatchSettings settings;
    private final Work work;
    private final Earlier earlier;
    private final SeenKeys keys = new SeenKeys();
    private final Tally tally = new Tally();
    private final List<Report> reports = new ArrayList<>();
    private Progress progress = Progress.none();
    private int status = ADEQUATE;

    private Batch(BatchSettings settings) {
        Quiet.logging();
        this.settings = settings;
        this.earlier = Earlier.read(settings.baseline(), settings.against());
        PlanDoor door = new PlanDoor();
        this.work = new Work(
                new PlanJudge(door, settings.answers(), settings.wantsLines()),
                settings.journal().isEmpty()
                        ? Optional.empty()
                        : Optional.of(Journal.open(settings.journal(), settings.maker(door.catalogueDigest()))));
    }

    /** Checks the plans that paths lead to and returns the exit status. */
    public static int run(BatchSettings settings, List<String> paths) {
        try {
            return new Batch(settings).run(paths);
        } catch (UncheckedIOException e) {
            return refused(String.valueOf(e.getMessage()));
        }
    }

    private int run(List<String> paths) {
        try (work;
                Stop stop = new Stop()) {
            return run(paths, stop);
        }
    }

    /** Reports are closed before the process may end: half of one is taken away. */
    private int run(List<String> paths, Stop stop) {
        try {
            open();
            boolean complete = judgeAll(paths, stop);
            List<String> remarks = new ArrayList<>(earlier.remarks(complete));
            if (!complete) {
                remarks.add(0, stopped());
            }
            End end = new End(tally, complete, remarks);
            reports.forEach(report -> report.complete(end));
            return complete ? exit() : STOPPED;
        } finally {
            reports.forEach(Report::close);
        }
    }

    private String stopped() {
        return "Stopped; not every plan was reached. "
                + (settings.journal().isEmpty()
                        ? "With --resume FILE a run can go on where it was stopped."
                        : "The same command goes on from here.");
    }

    private int exit() {
        return tally.plans() == 0 && !settings.allowEmpty()
                ? refused("nothing to check was found; --allow-empty says that this is as it should be.")
                : status;
    }

    private static int refused(String why) {
        System.err.println("underprop check: " + why);
        return NOT_DONE;
    }

    /** Opened one by one, so that those that are open are closed when the next cannot be. */
    private void open() {
        TextReport.Level level = settings.reporting().text();
        Runnable clear = () -> progress.clear();
        reports.add(settings.machine() ? TextReport.error(level, clear) : TextReport.standard(level, clear));
        for (ReportChoice choice : settings.reports()) {
            reports.add(choice.open(settings.reporting()));
        }
    }

    /** True when all was reached. */
    private boolean judgeAll(List<String> paths, Stop stop) {
        StandardInput input = new StandardInput(Sources.standardInput(), settings.standardInput());
        try (Sources sources = new Sources(paths, settings.selection(), settings.allowEmpty(), input, settings.own());
                OrderedWork threads = new OrderedWork(settings.workers())) {
            progress = Progress.onTerminal(sources::share);
            threads.run(
                    work.tasks(sources),
                    task -> {
                        Work.Done done = task.run();
                        return ready(earlier.judge(done.outcome()), done.frame());
                    },
                    this::take,
                    stop::asked);
            progress.clear();
            return !stop.asked() || !sources.hasNext();
        }
    }

    /** A plan that was judged, rendered for every report, and what the journal is to hold of it. */
    private record Ready(Judgement judgement, List<Runnable> parts, Optional<byte[]> frame) {}

    private Ready ready(Judgement judgement, Optional<byte[]> frame) {
        List<Runnable> parts =
                reports.stream().map(report -> report.prepare(judgement)).toList();
        return new Ready(judgement, parts, frame);
    }

    /** Takes a plan in the order of the input. */
    private void take(Ready ready) {
        Outcome outcome = ready.judgement().outcome();
        Optional<EntryName> before = keys.add(outcome.key(), outcome.name());
        Ready unique = before.map(first ->
                        ready(Judgement.of(Outcomes.repeated(outcome.key(), outcome.name(), first)), ready.frame()))
                .orElse(ready);
        earlier.met(unique.judgement().outcome());
        tally.add(unique.judgement());
        status = Math.max(status, status(unique.judgement()));
        unique.parts().forEach(Runnable::run);
        work.done(ready.frame());
        progress.tell(tally);
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
