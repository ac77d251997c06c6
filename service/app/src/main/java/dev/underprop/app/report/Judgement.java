package dev.underprop.app.report;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanChange;
import dev.underprop.wire.record.Findings;
import dev.underprop.wire.record.Outcome;
import java.util.Optional;
import java.util.Set;

/**
 * An outcome held against what was known before.
 *
 * @param outcome what became of the plan
 * @param accepted findings that are accepted, as check and place
 * @param change how the answer differs from an earlier one
 */
public record Judgement(Outcome outcome, Set<Spot> accepted, Optional<PlanChange> change) {

    /**
     * A check at a place.
     *
     * @param check id of the check
     * @param place the place
     */
    public record Spot(String check, String place) {
        /** Where a check of an answer was made. */
        public static Spot of(CheckResult check) {
            return new Spot(check.getCheck(), check.getPlace());
        }
    }

    public Judgement {
        accepted = Set.copyOf(accepted);
    }

    /** An outcome that nothing was known about before. */
    public static Judgement of(Outcome outcome) {
        return new Judgement(outcome, Set.of(), Optional.empty());
    }

    /** True when a check is a finding that is accepted. */
    public boolean accepts(CheckResult check) {
        return !accepted.isEmpty() && accepted.contains(Spot.of(check));
    }

    /** True when some finding of a judged plan is not accepted. */
    public boolean open() {
        return outcome instanceof Outcome.Judged judged
                && judged.result().getChecks().stream().anyMatch(check -> Findings.is(check) && !accepts(check));
    }
}
