package dev.underprop.engine.check;

import java.util.Collection;

/** What became of a situation or a plan. Ordered from best to worst. */
public enum PlanVerdict {
    /** Every required check passed or does not apply. */
    ADEQUATE,
    /** Nothing failed, but some required check could not be made. */
    INCOMPLETE,
    /** Some check failed. */
    INADEQUATE,
    /** Something can move without resistance. */
    UNSTABLE;

    /** The worse of two. */
    public PlanVerdict worse(PlanVerdict other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** Verdict over check results of a structure that stands. */
    public static PlanVerdict over(Collection<CheckResult> results) {
        PlanVerdict verdict = ADEQUATE;
        for (CheckResult result : results) {
            if (result.verdict() == Verdict.FAIL) {
                return INADEQUATE;
            }
            if (result.verdict() == Verdict.NOT_CHECKED) {
                verdict = INCOMPLETE;
            }
        }
        return verdict;
    }
}
