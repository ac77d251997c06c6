package dev.underprop.app.batch;

import dev.underprop.api.model.PadSizing;
import dev.underprop.api.model.SizingState;
import dev.underprop.app.report.JsonReport;
import dev.underprop.app.report.Outcome;
import dev.underprop.app.report.ProblemKind;
import dev.underprop.app.report.SizingReport;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.fault.Fault;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Finds pads for the request in a file. */
public final class PadSizings {
    private final AnswerOptions options;
    private final String report;

    /**
     * A run.
     *
     * @param options how the answer is written
     * @param report file for the record, {@code -} for the standard output, empty for none
     */
    public PadSizings(AnswerOptions options, String report) {
        this.options = options;
        this.report = report;
        Quiet.logging();
    }

    /** Finds pads and returns the exit status. */
    public int run(String file) {
        try (JsonReport records = JsonReport.to(report)) {
            Outcome outcome = outcome(PlanFile.at(Path.of(file)));
            SizingReport.on(report.equals("-")).say(outcome);
            records.add(outcome);
            records.complete();
            return status(outcome);
        } catch (UncheckedIOException e) {
            System.err.println("underprop pads: " + e.getMessage());
            return Batch.NOT_DONE;
        }
    }

    private static int status(Outcome outcome) {
        if (outcome instanceof Outcome.Sized sized) {
            return sized.result().getState() == SizingState.ADEQUATE ? Batch.ADEQUATE : Batch.NOT_ADEQUATE;
        }
        return Batch.NOT_DONE;
    }

    private Outcome outcome(PlanFile file) {
        if (!PlanFile.named(file.path())) {
            return unread(file, List.of(PathFaults.notNamedAsPlan()));
        }
        if (Files.exists(file.path()) && !Files.isRegularFile(file.path())) {
            return unread(file, List.of(PathFaults.notFile()));
        }
        try {
            return outcome(file, PlanReader.read(file.path()));
        } catch (IOException e) {
            return unread(file, List.of(PathFaults.of(e)));
        }
    }

    private Outcome outcome(PlanFile file, byte[] text) {
        Answer<PadSizing> answer = new PlanDoor().sizePads(text, file.format(), options);
        if (answer instanceof Answer.Judged<PadSizing> judged) {
            return new Outcome.Sized(file.name(), judged.model());
        }
        if (answer instanceof Answer.Faulty<PadSizing> faulty) {
            return Outcome.refused(file.name(), ProblemKind.FAULTY, "request", faulty.faults());
        }
        if (answer instanceof Answer.Unreadable<PadSizing> unreadable) {
            return unread(file, unreadable.faults());
        }
        throw new IllegalStateException("Unknown kind of answer");
    }

    private static Outcome unread(PlanFile file, List<Fault> faults) {
        return Outcome.refused(file.name(), ProblemKind.UNREADABLE, "file", faults);
    }
}
