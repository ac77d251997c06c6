package dev.underprop.app.batch;

import dev.underprop.api.model.LiftOutcome;
import dev.underprop.api.model.LiftPlan;
import dev.underprop.app.report.LiftReport;
import dev.underprop.app.source.OneFile;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.quantity.UnitSystem;
import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.Outcome;
import dev.underprop.wire.record.ProblemForm;
import java.io.UncheckedIOException;
import java.util.List;

/** Plans one lift from a file. */
public final class LiftRun {

    private final AnswerOptions options;
    private final String report;

    /**
     * A run.
     *
     * @param units of the results
     * @param report file for the record, {@code -} for the standard output, empty for none
     */
    public LiftRun(UnitSystem units, String report) {
        this.options = new AnswerOptions(units, AnswerOptions.Detail.COMPACT);
        this.report = report;
        Quiet.logging();
    }

    /** Plans the lift of the plan at a path and returns the exit status. */
    public int run(String path) {
        try {
            Entry entry = OneFile.read(path);
            return entry instanceof Entry.Text text
                    ? answer(text)
                    : refused(entry, ProblemForm.UNREADABLE, List.of(((Entry.Wrong) entry).fault()));
        } catch (UncheckedIOException e) {
            System.err.println("underprop lift: " + e.getMessage());
            return Batch.NOT_DONE;
        }
    }

    private int answer(Entry.Text text) {
        Answer<LiftPlan> answer = new PlanDoor().lift(text.bytes(), text.format(), options);
        if (answer instanceof Answer.Judged<LiftPlan> judged) {
            LiftReport.to(report).planned(text.name(), judged.model());
            return judged.model().getOutcome() == LiftOutcome.PLANNED ? Batch.ADEQUATE : Batch.NOT_ADEQUATE;
        }
        if (answer instanceof Answer.Faulty<LiftPlan> faulty) {
            return refused(text, ProblemForm.FAULTY, faulty.faults());
        }
        return refused(text, ProblemForm.UNREADABLE, ((Answer.Unreadable<LiftPlan>) answer).faults());
    }

    private int refused(Entry entry, ProblemForm kind, List<Fault> faults) {
        String subject = kind.equals(ProblemForm.FAULTY) ? "plan" : "file";
        LiftReport.to(report).refused(Outcome.refused(entry.name(), "", kind, subject, faults));
        return Batch.NOT_DONE;
    }
}
