package dev.underprop.wire.answer;

import dev.underprop.wire.quantity.UnitSystem;
import java.util.List;

/**
 * What an answer repeats of the question.
 *
 * @param model the plan in the contract's model
 * @param plan the plan as the engine got it
 * @param planDigest digest of the plan
 * @param catalogueDigest digest of the tables looked up
 * @param assumptions what reading took because the plan does not say it
 * @param units system of units wanted
 * @param full whether everything is told
 * @param working whether every check tells its working
 */
public record Question(
        dev.underprop.api.model.JobPlan model,
        dev.underprop.engine.plan.JobPlan plan,
        String planDigest,
        String catalogueDigest,
        List<String> assumptions,
        UnitSystem units,
        boolean full,
        boolean working) {

    public Question {
        assumptions = List.copyOf(assumptions);
    }
}
