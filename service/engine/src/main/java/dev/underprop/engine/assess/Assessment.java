package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.PlanVerdict;
import java.util.List;

/**
 * What became of a plan.
 *
 * @param verdict the worst over all situations
 * @param checks for each check and place, the worst over all situations; worst first
 * @param situations in the plan's order
 * @param assumptions what was taken as given because the plan does not say
 * @param advisories good practice that the plan touches
 * @param counts how much was computed
 */
public record Assessment(
        PlanVerdict verdict,
        List<CheckResult> checks,
        List<SituationResult> situations,
        List<String> assumptions,
        List<Advisory> advisories,
        Counts counts) {

    public Assessment {
        checks = List.copyOf(checks);
        situations = List.copyOf(situations);
        assumptions = List.copyOf(assumptions);
        advisories = List.copyOf(advisories);
    }

    /**
     * A good-practice finding without a ratio.
     *
     * @param code stable name
     * @param severity how much it matters
     * @param place in the plan's names, empty where it concerns the whole
     * @param message in words
     * @param source where it comes from
     */
    public record Advisory(String code, Severity severity, String place, String message, String source) {}

    /** How much an advisory matters. */
    public enum Severity {
        INFO,
        WARNING,
        DANGER
    }

    /**
     * How much was computed.
     *
     * @param situations situations
     * @param combinations load combinations
     * @param patterns live load patterns, the most in any situation
     * @param bounds ways in which things were taken to be (history, stiffness, fit-up, fastenings), the most in any
     *     situation
     * @param cases cases solved over all situations and bounds
     * @param factorised contact states factorised
     */
    public record Counts(int situations, int combinations, int patterns, int bounds, int cases, int factorised) {}
}
