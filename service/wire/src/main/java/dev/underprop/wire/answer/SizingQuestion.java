package dev.underprop.wire.answer;

import dev.underprop.api.model.Pad;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.sizing.Objective;
import dev.underprop.wire.quantity.UnitSystem;
import java.util.List;
import java.util.Map;

/**
 * What an answer repeats of a question for pads.
 *
 * @param objective what is to be least
 * @param ground under the pads
 * @param pads those that were tried, by name, in the words of a plan
 * @param digest of the request
 * @param catalogueDigest digest of the tables looked up
 * @param assumptions what reading took because the request does not say it
 * @param units system of units wanted
 * @param full whether everything is told
 * @param working whether checks are told with their working
 */
public record SizingQuestion(
        Objective objective,
        Ground ground,
        Map<String, Pad> pads,
        String digest,
        String catalogueDigest,
        List<String> assumptions,
        UnitSystem units,
        boolean full,
        boolean working) {

    public SizingQuestion {
        assumptions = List.copyOf(assumptions);
    }
}
