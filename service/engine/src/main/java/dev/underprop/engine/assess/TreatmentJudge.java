package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.plan.Member;

/** Judges whether what was done to the timber is known, and so whether its design values are. */
final class TreatmentJudge {

    private TreatmentJudge() {}

    /** What a stated treatment means for the member. */
    static Finding judge(Member.Treated treatment) {
        return switch (treatment) {
            case UNTREATED -> new CheckResult.NotApplicable("stated untreated");
            case NOT_INCISED -> new CheckResult.NotApplicable("stated treated and not incised");
            case INCISED -> new CheckResult.NotApplicable("stated incised: the incising factors are applied");
            case UNSTATED ->
                new CheckResult.NotChecked(
                        "whether it is treated is not stated; values of timber not incised were used (declare: treatment)");
            case INCISING_UNSTATED ->
                new CheckResult.NotChecked(
                        "whether the treated timber is incised is not stated; values of timber not incised were used (declare: incised)");
            case FIRE_RETARDANT ->
                new CheckResult.NotChecked("fire retardant treatment: its effect is known to the treater alone");
        };
    }
}
