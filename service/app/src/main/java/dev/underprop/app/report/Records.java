package dev.underprop.app.report;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanCheckRecord;
import dev.underprop.wire.record.Extent;
import dev.underprop.wire.record.Findings;
import dev.underprop.wire.record.Outcome;
import dev.underprop.wire.record.PlanRecords;
import java.util.List;

/** Records of the contract, with what a plan was held against. */
public final class Records {
    private Records() {}

    /** The record of a plan. */
    public static PlanCheckRecord of(Judgement judgement, Extent extent) {
        PlanCheckRecord record = PlanRecords.of(judgement.outcome(), extent);
        if (judgement.outcome() instanceof Outcome.Judged judged) {
            accepted(record, judgement, judged.result().getChecks());
        }
        judgement.change().ifPresent(record::change);
        return record;
    }

    private static void accepted(PlanCheckRecord record, Judgement judgement, List<CheckResult> checks) {
        List<CheckResult> accepted = checks.stream().filter(judgement::accepts).toList();
        if (!accepted.isEmpty()) {
            record.accepted(accepted.stream().map(Findings::of).toList());
        }
    }
}
