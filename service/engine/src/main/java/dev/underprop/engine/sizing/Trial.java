package dev.underprop.engine.sizing;

import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Verdict;
import dev.underprop.engine.pad.PadChecks;
import dev.underprop.engine.pad.PadChecks.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * One pad tried under one post, neighbours aside.
 *
 * @param candidate the pad
 * @param standing the post on it
 * @param checks as far as they were made: a pad that fails is not looked at further
 * @param outcome what came of it
 */
public record Trial(Candidate candidate, Standing standing, List<CheckResult> checks, Outcome outcome) {

    /** What came of it. */
    public enum Outcome {
        /** Everything about the pad itself was checked and passes; what the site leaves open may be open. */
        PASSES,
        /** Nothing fails, but something about the pad itself is not known. */
        OPEN,
        FAILS
    }

    /** What must have been checked of a pad itself. */
    private static final Set<CheckId> OWN = Set.of(
            CheckId.PAD_SOIL_BEARING, CheckId.PAD_STRENGTH, CheckId.BASE_PLATE_BEARING, CheckId.PAD_ECCENTRICITY);

    public Trial {
        checks = List.copyOf(checks);
    }

    /** Judges one pad; the check that most pads fail comes first, and the first that fails ends it. */
    static Trial of(Candidate candidate, Standing standing, PadChecks judges) {
        List<CheckResult> checks = new ArrayList<>(6);
        for (Check check : CHECKS) {
            CheckResult result = check.of(judges, standing);
            checks.add(result);
            if (result.verdict() == Verdict.FAIL) {
                return new Trial(candidate, standing, checks, Outcome.FAILS);
            }
        }
        boolean open = checks.stream().anyMatch(c -> OWN.contains(c.id()) && c.verdict() != Verdict.PASS);
        return new Trial(candidate, standing, checks, open ? Outcome.OPEN : Outcome.PASSES);
    }

    private interface Check {
        CheckResult of(PadChecks judges, Standing on);
    }

    private static final List<Check> CHECKS = List.of(
            PadChecks::pressure,
            PadChecks::eccentricity,
            PadChecks::plate,
            PadChecks::strength,
            (judges, on) -> judges.settlement(on, List.of(), List.of()),
            PadChecks::cut);

    /** The check that failed, or the one nearest to its limit. */
    public CheckResult governing() {
        return checks.stream().max(CheckResult.BEST_FIRST).orElseThrow();
    }

    /** Every check, made whether one fails or not. */
    static List<CheckResult> whole(Standing standing, PadChecks judges) {
        return CHECKS.stream().map(check -> check.of(judges, standing)).toList();
    }
}
