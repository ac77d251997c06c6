package dev.underprop.app.report;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.CheckVerdict;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.api.model.PlanCheckBrief;
import dev.underprop.api.model.PlanCheckRecord;
import java.util.List;

/** Records of the contract, one a plan. */
public final class Records {

    /** How much a record tells. */
    public enum Extent {
        /** The verdict and what led to it. */
        BRIEF,
        /** The whole answer. */
        WHOLE
    }

    private Records() {}

    /** The record of a plan. */
    public static PlanCheckRecord of(Judgement judgement, Extent extent) {
        Outcome outcome = judgement.outcome();
        PlanCheckRecord record = new PlanCheckRecord().id(outcome.key());
        if (!outcome.name().path().isEmpty()) {
            record.path(outcome.name().path());
        }
        if (outcome.name().line() > 0) {
            record.line(outcome.name().line());
        }
        if (outcome instanceof Outcome.Judged judged) {
            answer(record, judged.result(), extent);
            accepted(record, judgement, judged.result().getChecks());
        } else if (outcome instanceof Outcome.Refused refused) {
            record.problem(refused.problem());
        }
        judgement.change().ifPresent(record::change);
        return record;
    }

    private static void answer(PlanCheckRecord record, PlanCheck result, Extent extent) {
        if (extent == Extent.WHOLE) {
            record.result(result);
        } else {
            record.brief(brief(result));
        }
    }

    private static void accepted(PlanCheckRecord record, Judgement judgement, List<CheckResult> checks) {
        List<CheckResult> accepted = checks.stream().filter(judgement::accepts).toList();
        if (!accepted.isEmpty()) {
            record.accepted(accepted.stream().map(Findings::of).toList());
        }
    }

    /** The verdict of an answer and what led to it. */
    static PlanCheckBrief brief(PlanCheck result) {
        List<CheckResult> checks = result.getChecks();
        PlanCheckBrief brief = new PlanCheckBrief()
                .engine(result.getEngine())
                .basis(result.getBasis())
                .planDigest(result.getPlanDigest())
                .catalogueDigest(result.getCatalogueDigest())
                .verdict(result.getVerdict())
                .failed(checks.stream()
                        .filter(Findings::fails)
                        .map(Findings::of)
                        .toList())
                .notChecked(checks.stream()
                        .filter(check -> check.getVerdict() == CheckVerdict.NOT_CHECKED)
                        .map(CheckResult::getCheck)
                        .distinct()
                        .toList());
        Findings.worst(checks).map(Findings::of).ifPresent(brief::governs);
        return brief;
    }
}
