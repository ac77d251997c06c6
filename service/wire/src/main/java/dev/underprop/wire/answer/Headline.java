package dev.underprop.wire.answer;

import dev.underprop.engine.assess.Assessment;
import dev.underprop.engine.assess.SituationResult;
import dev.underprop.engine.check.CheckId;
import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Verdict;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The verdict and what governs it, in one sentence that can be read out on site. */
final class Headline {

    private Headline() {}

    static String of(Assessment assessment) {
        return sentence(assessment) + relies(assessment);
    }

    /** What the answer rests on that nobody read on the timber, as the advisories tell it in full. */
    private static String relies(Assessment assessment) {
        return assessment.advisories().stream()
                .filter(a -> a.code().equals("grade-assumed") || a.code().equals("section-reduced"))
                .map(a -> " " + a.message())
                .collect(Collectors.joining());
    }

    private static String sentence(Assessment assessment) {
        return switch (assessment.verdict()) {
            case UNSTABLE -> unstable(assessment);
            case INADEQUATE ->
                "The plan fails: "
                        + worst(assessment, Verdict.FAIL).map(Headline::failure).orElse("see the checks")
                        + also(assessment) + ".";
            case INCOMPLETE ->
                "Nothing fails in what was checked, but the plan is not fully checked: " + counted(open(assessment))
                        + " not made" + closest(assessment) + ".";
            case ADEQUATE -> "Every required check was made and passes" + closest(assessment) + ".";
        };
    }

    private static String unstable(Assessment assessment) {
        String text = "The plan is unstable";
        for (SituationResult situation : assessment.situations()) {
            if (situation.stability() instanceof SituationResult.Moves moves) {
                return text + ": in situation " + situation.name() + ", " + moves.reason() + ".";
            }
        }
        return text + ".";
    }

    private static Optional<CheckResult> worst(Assessment assessment, Verdict verdict) {
        return assessment.checks().stream()
                .filter(check -> check.verdict() == verdict)
                .filter(check -> verdict == Verdict.FAIL || !Double.isNaN(check.ratio()))
                .max(CheckResult.BEST_FIRST);
    }

    private static String failure(CheckResult check) {
        String what = Wording.title(check.id()) + " at " + check.place() + ", ";
        return what + measure(check) + situation(check);
    }

    private static String measure(CheckResult check) {
        if (check.finding() instanceof CheckResult.Condition condition) {
            return condition.reason();
        }
        return Double.isInfinite(check.ratio())
                ? "which has no capacity"
                : "ratio " + Figures.ratio(check.ratio()) + " where 1 is allowed";
    }

    private static String situation(CheckResult check) {
        return check.where() instanceof CheckResult.InCase in ? ", in situation " + in.situation() : "";
    }

    private static String closest(Assessment assessment) {
        return worst(assessment, Verdict.PASS)
                .map(check -> "; of those made, " + Wording.title(check.id()) + " at " + check.place()
                        + " governs with ratio " + Figures.ratio(check.ratio()) + situation(check))
                .orElse("");
    }

    private static String also(Assessment assessment) {
        int open = open(assessment);
        return open == 0 ? "" : "; besides, " + counted(open) + " not made";
    }

    private static String counted(int checks) {
        return checks == 1 ? "1 check was" : checks + " checks were";
    }

    private static int open(Assessment assessment) {
        Set<CheckId> ids = EnumSet.noneOf(CheckId.class);
        for (SituationResult situation : assessment.situations()) {
            for (CheckResult check : situation.checks()) {
                if (check.verdict() == Verdict.NOT_CHECKED) {
                    ids.add(check.id());
                }
            }
        }
        return ids.size();
    }
}
