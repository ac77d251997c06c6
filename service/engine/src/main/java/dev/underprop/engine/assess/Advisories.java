package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Assessment.Advisory;
import dev.underprop.engine.assess.Assessment.Severity;
import dev.underprop.engine.plan.Intake;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Situation;
import java.util.ArrayList;
import java.util.List;

/** Good practice that a plan touches. */
final class Advisories {

    private static final String PRACTICE = "common practice, no source";

    /** A post that carries this much more than its tributary load is worth a word. */
    private static final double WORTH_A_WORD = 1.10;

    /** A difference between histories beyond this part of the larger load is worth a word. */
    private static final double HISTORY_MATTERS = 0.20;

    /** Hogging below this (N·m) is rounding. */
    private static final double SOME_HOGGING = 1;

    private Advisories() {}

    static List<Advisory> of(JobPlan plan, List<SituationResult> situations) {
        List<Advisory> list = new ArrayList<>();
        for (int i = 0; i < situations.size(); i++) {
            SituationResult result = situations.get(i);
            Situation situation = plan.situations().get(i);
            if (situation.takesAway()) {
                list.add(bearingRemoved(result));
            }
            addHogging(plan, result, list);
            addBeyondTributary(result, list);
            addHistory(result, list);
            addTies(result, list);
        }
        addIntake(plan, list);
        addTimber(plan, list);
        list.addAll(PracticeAdvice.of(plan));
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
        boolean hogs = result.members().stream()
                .anyMatch(m -> m.kind() == SituationResult.MemberKind.JOIST
                        && m.hogging().value() > SOME_HOGGING);
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

    /** Posts whose load depends much on how it came onto them. */
    private static void addHistory(SituationResult result, List<Advisory> list) {
        for (SituationResult.PostResult post : result.posts()) {
            double larger = Math.max(post.asFound(), post.wished());
            double difference = Math.abs(post.asFound() - post.wished());
            if (difference > HISTORY_MATTERS * larger) {
                boolean found = post.asFound() > post.wished();
                list.add(new Advisory(
                        "history-matters",
                        Severity.INFO,
                        post.name(),
                        "In situation " + result.name() + " this post carries "
                                + StrictMath.round(100 * difference / larger) + " percent less if "
                                + (found
                                        ? "the shores stood before any load came on than if the floor hung as found when"
                                                + " they were set snug"
                                        : "the floor hung as found when the shores were set snug than if they had stood"
                                                + " before any load came on: set snug, they take only what moves onto"
                                                + " them later")
                                + ". The larger load counts.",
                        PRACTICE));
            }
        }
    }

    private static void addTies(SituationResult result, List<Advisory> list) {
        if (result.whatIf().hangsOnTies()) {
            list.add(new Advisory(
                    "stands-by-its-fastenings",
                    Severity.DANGER,
                    result.name(),
                    "If what holds the joists or girders down lets go, something moves in this situation: have every"
                            + " fastening looked at before the bearing goes.",
                    PRACTICE));
        }
    }

    private static void addIntake(JobPlan plan, List<Advisory> list) {
        for (Intake.Answer answer : plan.circumstances().intake().answers()) {
            // What is fastened to the floor has an advisory of its own, given unless the answer is no.
            boolean told = answer.question() == Intake.Question.SERVICES;
            if (answer.reply() == Intake.Reply.YES && answer.question().kind() == Intake.Kind.FINDING && !told) {
                String note = answer.note().isEmpty() ? "" : " Noted: " + answer.note() + ".";
                list.add(new Advisory(
                        "intake",
                        Severity.WARNING,
                        answer.question().words(),
                        whatToDo(answer.question()) + note,
                        PRACTICE));
            }
        }
    }

    private static String whatToDo(Intake.Question question) {
        return switch (question) {
            case BRICK_VENEER ->
                "Brick or plaster cracks when the floor moves: agree on what may move, and read it at every stage.";
            case LONG_DURATION ->
                "The shores stand long: frost, wet ground and drying timber change them; read and reset them on fixed days.";
            default -> "Look at it before anything moves.";
        };
    }

    private static void addTimber(JobPlan plan, List<Advisory> list) {
        CircumstanceJudge.members(plan)
                .map(Member::details)
                .filter(d -> d.origin() instanceof Member.Assumed)
                .map(d -> ((Member.Assumed) d.origin()).by())
                .distinct()
                .forEach(by -> list.add(new Advisory(
                        "grade-assumed",
                        Severity.WARNING,
                        "",
                        "The grade of some timber is not read on it but assumed, by " + by + ".",
                        PRACTICE)));
        CircumstanceJudge.members(plan)
                .map(Member::details)
                .filter(d -> d.section() instanceof Member.Reduced)
                .map(d -> ((Member.Reduced) d.section()).by())
                .distinct()
                .forEach(by -> list.add(new Advisory(
                        "section-reduced",
                        Severity.WARNING,
                        "",
                        "Some timber is notched, bored or decayed; what is left was measured by " + by
                                + ". Probe it again before it is loaded.",
                        PRACTICE)));
    }
}
