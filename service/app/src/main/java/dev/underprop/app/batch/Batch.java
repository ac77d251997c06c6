package dev.underprop.app.batch;

import dev.underprop.app.report.JsonReport;
import dev.underprop.app.report.Outcome;
import dev.underprop.app.report.ProblemKind;
import dev.underprop.app.report.TerminalReport;
import dev.underprop.wire.door.AnswerOptions;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;

/** Checks many plans; what is wrong with one never stops the others. */
public final class Batch {
    /** Exit status: every plan is adequate. */
    public static final int ADEQUATE = 0;

    /** Exit status: some plan is inadequate, incomplete or unstable. */
    public static final int NOT_ADEQUATE = 1;

    /** Exit status: the job could not be done. */
    public static final int NOT_DONE = 2;

    private static final String STANDARD_OUTPUT = "-";

    private final AnswerOptions options;
    private final String report;

    /**
     * A batch.
     *
     * @param options how answers are written
     * @param report file for the records, {@code -} for the standard output, empty for none
     */
    public Batch(AnswerOptions options, String report) {
        this.options = options;
        this.report = report;
        Quiet.logging();
    }

    /** Checks the plans in files and folders and returns the exit status. */
    public int run(List<String> paths) {
        boolean machine = report.equals(STANDARD_OUTPUT);
        try (TerminalReport people = TerminalReport.on(machine);
                JsonReport records = JsonReport.to(report)) {
            int status = check(paths, people, records);
            people.end();
            records.complete();
            return status;
        } catch (UncheckedIOException e) {
            System.err.println("underprop check: " + e.getMessage());
            return NOT_DONE;
        }
    }

    private int check(List<String> paths, TerminalReport people, JsonReport records) {
        PlanReader reader = new PlanReader(options);
        int status = ADEQUATE;
        for (PlanFile file : PlanFinder.find(paths)) {
            Outcome outcome = judge(reader, file);
            people.add(outcome);
            records.add(outcome);
            status = Math.max(status, status(outcome));
        }
        return status;
    }

    private static Outcome judge(PlanReader reader, PlanFile file) {
        try {
            return reader.judge(file);
        } catch (RuntimeException | StackOverflowError e) {
            PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
            return new Outcome.Refused(
                    file.name(),
                    ProblemKind.INTERNAL_ERROR
                            .problem("Nothing can be said about the plan. Please report the id of this problem.")
                            .instance(reportDefect(e, err)));
        }
    }

    private static int status(Outcome outcome) {
        if (outcome instanceof Outcome.Judged judged) {
            return judged.adequate() ? ADEQUATE : NOT_ADEQUATE;
        }
        return NOT_DONE;
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
