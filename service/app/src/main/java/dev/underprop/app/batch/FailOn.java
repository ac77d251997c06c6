package dev.underprop.app.batch;

import dev.underprop.api.model.CheckVerdict;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.app.report.Judgement;
import dev.underprop.wire.record.Outcome;
import java.util.List;

/** The mildest verdict for which a run fails. */
public enum FailOn {
    /** Only where something can move without resistance. */
    UNSTABLE,
    /** Also where a check fails. */
    INADEQUATE,
    /** Also where a check was not made. */
    INCOMPLETE;

    /** True when a judged plan is a failure; findings that are accepted do not count, {@code UNSTABLE} always does. */
    boolean fails(Judgement judgement) {
        if (!(judgement.outcome() instanceof Outcome.Judged judged) || judged.adequate()) {
            return false;
        }
        PlanVerdict verdict = judged.result().getVerdict();
        if (verdict == PlanVerdict.UNSTABLE) {
            return true;
        }
        boolean failure = open(judgement, judged, List.of(CheckVerdict.FAIL));
        return switch (this) {
            case UNSTABLE -> false;
            case INADEQUATE -> failure;
            case INCOMPLETE -> failure || open(judgement, judged, List.of(CheckVerdict.NOT_CHECKED)) || silent(judged);
        };
    }

    private static boolean open(Judgement judgement, Outcome.Judged judged, List<CheckVerdict> verdicts) {
        return judged.result().getChecks().stream()
                .anyMatch(check -> verdicts.contains(check.getVerdict()) && !judgement.accepts(check));
    }

    /** A verdict that is not adequate although no check says why is never let pass. */
    private static boolean silent(Outcome.Judged judged) {
        return judged.result().getChecks().stream()
                .noneMatch(check ->
                        check.getVerdict() == CheckVerdict.FAIL || check.getVerdict() == CheckVerdict.NOT_CHECKED);
    }
}
