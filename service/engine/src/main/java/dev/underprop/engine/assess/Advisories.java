package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Assessment.Advisory;
import dev.underprop.engine.assess.Assessment.Severity;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Situation;
import java.util.ArrayList;
import java.util.List;

/** Good practice that a plan touches. */
final class Advisories {

    private static final String PRACTICE = "common practice, no source";

    /** A post that carries this much more than its tributary load is worth a word. */
    private static final double WORTH_A_WORD = 1.10;

    /** Hogging below this (N·m) is rounding. */
    private static final double SOME_HOGGING = 1;

    private Advisories() {}

    static List<Advisory> of(JobPlan plan, List<SituationResult> situations) {
        List<Advisory> list = new ArrayList<>();
        for (int i = 0; i < situations.size(); i++) {
            SituationResult result = situations.get(i);
            Situation situation = plan.situations().get(i);
            if (!situation.removed().isEmpty()) {
                list.add(bearingRemoved(result));
            }
            addHogging(plan, result, list);
            addBeyondTributary(result, list);
        }
        return list;
    }

    private static Advisory bearingRemoved(SituationResult result) {
        return new Advisory(
                "bearing-taken-away",
                Severity.DANGER,
                result.name(),
                "A bearing is taken away in this situation: nobody under or above the bay while it goes, and take its"
                        + " load onto the shore first.",
                PRACTICE);
    }

    private static void addHogging(JobPlan plan, SituationResult result, List<Advisory> list) {
        boolean hogs =
                result.members().stream().anyMatch(m -> !m.beam() && m.hogging().value() > SOME_HOGGING);
        if (hogs && !plan.shores().isEmpty()) {
            list.add(new Advisory(
                    "block-over-the-shore",
                    Severity.WARNING,
                    result.name(),
                    "The joists are bent upwards over a shore, so their bottom edges are in compression: block them"
                            + " against each other there.",
                    PRACTICE));
        }
    }

    private static void addBeyondTributary(SituationResult result, List<Advisory> list) {
        for (SituationResult.PostResult post : result.posts()) {
            if (post.byHand() > 0 && post.greatest().value() > WORTH_A_WORD * post.byHand()) {
                list.add(new Advisory(
                        "more-than-tributary",
                        Severity.INFO,
                        post.name(),
                        "In situation " + result.name()
                                + " this post carries clearly more than its tributary share: the beam is continuous"
                                + " over it, or the joists lever on the shore.",
                        PRACTICE));
            }
        }
    }
}
