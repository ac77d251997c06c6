package dev.underprop.engine.check;

import dev.underprop.engine.standard.Citation;

/**
 * One judgement.
 *
 * @param id which check
 * @param place what was judged, in the plan's own names
 * @param finding what was found
 * @param where the case that governs, or that none does
 * @param citation the rule applied
 * @param steps how the numbers come about, where that was asked for
 */
public record CheckResult(CheckId id, String place, Finding finding, Where where, Citation citation, Steps steps) {

    /** A judgement without a calculation record. */
    public CheckResult(CheckId id, String place, Finding finding, Where where, Citation citation) {
        this(id, place, finding, where, citation, Steps.NONE);
    }

    /** Orders results from best to worst: by verdict, then by ratio; what has no ratio stands before what has one. */
    public static final java.util.Comparator<CheckResult> BEST_FIRST =
            java.util.Comparator.comparing(CheckResult::verdict).thenComparingDouble(CheckResult::rank);

    /** What was found. */
    public sealed interface Finding {}

    /**
     * A demand against a capacity, both in SI, not negative.
     *
     * @param measure kind of both
     * @param demand what is asked
     * @param capacity what is there
     */
    public record Judged(Measure measure, double demand, double capacity) implements Finding {
        public Judged {
            if (!(demand >= 0) || !(capacity >= 0)) {
                throw new IllegalArgumentException("demand and capacity must be numbers, not negative");
            }
        }
    }

    /**
     * A demand on something that has no capacity at all: a rule refuses it.
     *
     * @param measure kind of the demand
     * @param demand what is asked
     * @param reason why there is no capacity
     */
    public record Refused(Measure measure, double demand, String reason) implements Finding {}

    /**
     * A yes or no.
     *
     * @param met whether what must hold does hold
     * @param measure kind of the value that shows it
     * @param value the value that shows it
     * @param reason in words
     */
    public record Condition(boolean met, Measure measure, double value, String reason) implements Finding {}

    /** Something needed is missing. */
    public record NotChecked(String reason) implements Finding {}

    /** Nothing to judge. */
    public record NotApplicable(String reason) implements Finding {}

    /** Where the governing demand arises. */
    public sealed interface Where {}

    /** In no particular case. */
    public record NoCase() implements Where {}

    /**
     * In a case.
     *
     * @param situation name of the situation
     * @param combination name of the combination
     * @param pattern name of the live load pattern
     * @param at place along the member (m), NaN where the place is a point
     * @param bound how things were taken to be
     */
    public record InCase(String situation, String combination, String pattern, double at, Bound bound)
            implements Where {}

    /** Demand over capacity; infinite where there is no capacity, NaN where nothing was compared. */
    public double ratio() {
        if (finding instanceof Judged judged) {
            return judged.capacity > 0
                    ? judged.demand / judged.capacity
                    : judged.demand > 0 ? Double.POSITIVE_INFINITY : Double.NaN;
        }
        return finding instanceof Refused ? Double.POSITIVE_INFINITY : Double.NaN;
    }

    private double rank() {
        double ratio = ratio();
        return Double.isNaN(ratio) ? -1 : ratio;
    }

    /** The verdict. Zero over zero is not checked, never a pass. */
    public Verdict verdict() {
        if (finding instanceof Judged) {
            double ratio = ratio();
            if (Double.isNaN(ratio)) {
                return Verdict.NOT_CHECKED;
            }
            return ratio <= 1 ? Verdict.PASS : Verdict.FAIL;
        }
        if (finding instanceof Condition condition) {
            return condition.met ? Verdict.PASS : Verdict.FAIL;
        }
        if (finding instanceof NotChecked) {
            return Verdict.NOT_CHECKED;
        }
        return finding instanceof NotApplicable ? Verdict.NOT_APPLICABLE : Verdict.FAIL;
    }
}
