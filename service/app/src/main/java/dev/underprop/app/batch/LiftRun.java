package dev.underprop.app.batch;

import dev.underprop.api.model.LiftOutcome;
import dev.underprop.api.model.LiftPlan;
import dev.underprop.app.report.LiftReport;
import dev.underprop.app.report.Outcome;
import dev.underprop.app.report.ProblemKind;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Plans one lift from a file. */
public final class LiftRun {

    private final AnswerOptions options;
    private final boolean json;

    /**
     * A run.
     *
     * @param units of the results
     * @param json whether to write JSON instead of words
     */
    public LiftRun(UnitSystem units, boolean json) {
        this.options = new AnswerOptions(units, AnswerOptions.Detail.COMPACT);
        this.json = json;
        Quiet.logging();
    }

    /** Plans the lift of the plan at a path and returns the exit status. */
    public int run(String path) {
        PlanFile file = PlanFile.at(Path.of(path));
        LiftReport report = new LiftReport(json);
        if (!Files.exists(file.path())) {
            return refused(report, file, ProblemKind.UNREADABLE, List.of(PathFaults.missing()));
        }
        if (!Files.isRegularFile(file.path())) {
            return refused(report, file, ProblemKind.UNREADABLE, List.of(PathFaults.notFile()));
        }
        byte[] text;
        try {
            text = PlanReader.read(file.path());
        } catch (IOException e) {
            return refused(report, file, ProblemKind.UNREADABLE, List.of(PathFaults.of(e)));
        }
        Answer<LiftPlan> answer = new PlanDoor().lift(text, file.format(), options);
        if (answer instanceof Answer.Judged<LiftPlan> judged) {
            report.plan(file.name(), judged.model());
            return judged.model().getOutcome() == LiftOutcome.PLANNED ? Batch.ADEQUATE : Batch.NOT_ADEQUATE;
        }
        if (answer instanceof Answer.Faulty<LiftPlan> faulty) {
            return refused(report, file, ProblemKind.FAULTY, faulty.faults());
        }
        return refused(report, file, ProblemKind.UNREADABLE, ((Answer.Unreadable<LiftPlan>) answer).faults());
    }

    private static int refused(LiftReport report, PlanFile file, ProblemKind kind, List<Fault> faults) {
        String subject = kind == ProblemKind.FAULTY ? "plan" : "file";
        report.refused((Outcome.Refused) Outcome.refused(file.name(), kind, subject, faults));
        return Batch.NOT_DONE;
    }
}
