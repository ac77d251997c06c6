package dev.underprop.app.batch;

import dev.underprop.api.model.PadSizing;
import dev.underprop.api.model.SizingState;
import dev.underprop.app.report.SizingReport;
import dev.underprop.app.source.OneFile;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.Outcome;
import dev.underprop.wire.record.ProblemForm;
import java.io.UncheckedIOException;
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
        try {
            Entry entry = OneFile.read(file);
            return entry instanceof Entry.Text text
                    ? answer(text)
                    : refused(entry, ProblemForm.UNREADABLE, List.of(((Entry.Wrong) entry).fault()));
        } catch (UncheckedIOException e) {
            System.err.println("underprop pads: " + e.getMessage());
            return Batch.NOT_DONE;
        }
    }

    private int answer(Entry.Text text) {
        Answer<PadSizing> answer = new PlanDoor().sizePads(text.bytes(), text.format(), options);
        if (answer instanceof Answer.Judged<PadSizing> judged) {
            SizingReport.to(report).found(text.name(), judged.model());
            return judged.model().getState() == SizingState.ADEQUATE ? Batch.ADEQUATE : Batch.NOT_ADEQUATE;
        }
        if (answer instanceof Answer.Faulty<PadSizing> faulty) {
            return refused(text, ProblemForm.FAULTY, faulty.faults());
        }
        return refused(text, ProblemForm.UNREADABLE, ((Answer.Unreadable<PadSizing>) answer).faults());
    }

    private int refused(Entry entry, ProblemForm kind, List<Fault> faults) {
        String subject = kind.equals(ProblemForm.FAULTY) ? "request" : "file";
        SizingReport.to(report).refused(Outcome.refused(entry.name(), "", kind, subject, faults));
        return Batch.NOT_DONE;
    }
}
