package dev.underprop.engine.sizing;

import dev.underprop.engine.Halt;
import dev.underprop.engine.assess.Assessment;
import dev.underprop.engine.assess.Assessor;
import dev.underprop.engine.assess.SituationResult;
import dev.underprop.engine.assess.SituationResult.PostResult;
import dev.underprop.engine.pad.PadChecks;
import dev.underprop.engine.pad.PadLoad;
import dev.underprop.engine.plan.Circumstances;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Finds pads for the posts of a plan: its reactions over all situations, combinations, patterns and bounds. A larger pad gives
 * less and so draws load; the plan is assessed again with what is proposed, and sized again for the worse of both, until the
 * proposal stays.
 */
public final class PlanSizer {

    /** Rounds after which a proposal that still changes is given up. */
    private static final int ROUNDS = 8;

    private PlanSizer() {}

    /** What came of it. */
    public sealed interface Outcome {}

    /**
     * The plan stands, and its posts have loads.
     *
     * @param sizing the pads
     * @param fitted the plan with them
     * @param assessment of that plan
     * @param rounds assessments made
     * @param stays whether the last one still proposes the same pads
     */
    public record Sized(PadSizing sizing, JobPlan fitted, Assessment assessment, int rounds, boolean stays)
            implements Outcome {}

    /**
     * The plan does not stand, so that its posts have no loads.
     *
     * @param situation that does not stand
     * @param reason in words
     * @param rounds assessments made: one of the plan as it was given, the others with the pads that were proposed
     */
    public record Unstable(String situation, String reason, int rounds) implements Outcome {
        /** Whether it is the plan with the pads that were proposed, and not as it was given. */
        public boolean fitted() {
            return rounds > 1;
        }
    }

    /**
     * Sizes the pads of a plan as long as the answer is wanted.
     *
     * @param working whether the checks of what is proposed tell how they were worked out
     * @param halt asked before every case and every pad
     * @throws dev.underprop.engine.Halted when nobody wants the answer any more
     */
    public static Outcome size(JobPlan plan, List<Candidate> stock, Objective objective, boolean working, Halt halt) {
        Circumstances around = plan.circumstances();
        PadChecks.Site site = new PadChecks.Site(
                plan.ground(), around.excavation(), around.limits().settlement());
        Task wish = new Task(List.of(), site, stock, objective, working);
        return size(plan, wish, one -> Assessor.assess(one, false, halt), halt);
    }

    /** The same, assessed by somebody. @param wish what is asked, without posts */
    static Outcome size(JobPlan plan, Task wish, Function<JobPlan, Assessment> assessor, Halt halt) {
        Assessment assessment = assessor.apply(plan);
        List<Unstable> unstable = unstable(assessment, 1);
        if (!unstable.isEmpty()) {
            return unstable.get(0);
        }
        Task task = wish.with(loaded(plan, assessment));
        PadSizing sizing = PadSizer.size(task, halt);
        for (int round = 2; ; round++) {
            JobPlan fitted = fitted(plan, sizing);
            assessment = assessor.apply(fitted);
            unstable = unstable(assessment, round);
            if (!unstable.isEmpty()) {
                return unstable.get(0);
            }
            Task next = task.with(worse(task.posts(), loaded(fitted, assessment)));
            PadSizing again = PadSizer.size(next, halt);
            if (again.same(sizing)) {
                return new Sized(again, fitted, assessment, round, true);
            }
            if (round >= ROUNDS) {
                return unsettled(plan, again, round + 1, assessor);
            }
            task = next;
            sizing = again;
        }
    }

    /** What is proposed at last, assessed: whatever is told of the plan is told of it with these pads. */
    private static Outcome unsettled(JobPlan plan, PadSizing last, int rounds, Function<JobPlan, Assessment> assessor) {
        JobPlan fitted = fitted(plan, last);
        Assessment assessment = assessor.apply(fitted);
        List<Unstable> unstable = unstable(assessment, rounds);
        return unstable.isEmpty() ? new Sized(last, fitted, assessment, rounds, false) : unstable.get(0);
    }

    /** The first situation that does not stand. */
    private static List<Unstable> unstable(Assessment assessment, int rounds) {
        for (SituationResult situation : assessment.situations()) {
            if (situation.stability() instanceof SituationResult.Moves moves) {
                return List.of(new Unstable(situation.name(), moves.reason(), rounds));
            }
        }
        return List.of();
    }

    private static List<Loaded> worse(List<Loaded> one, List<Loaded> other) {
        List<Loaded> worse = new ArrayList<>();
        for (int p = 0; p < one.size(); p++) {
            worse.add(one.get(p).worse(other.get(p)));
        }
        return worse;
    }

    /** The posts of a plan under the envelope of their loads, shore by shore. */
    static List<Loaded> loaded(JobPlan plan, Assessment assessment) {
        List<Loaded> posts = new ArrayList<>();
        for (int s = 0; s < plan.shores().size(); s++) {
            Shore shore = plan.shores().get(s);
            for (int p = 0; p < shore.posts().size(); p++) {
                double greatest = 0;
                double factored = 0;
                double least = Double.POSITIVE_INFINITY;
                for (SituationResult situation : assessment.situations()) {
                    PostResult result = of(situation, s, p);
                    greatest = Math.max(greatest, result.greatest().value());
                    factored = Math.max(factored, result.factored().value());
                    least = Math.min(least, Math.max(0, result.least().value()));
                }
                Post post = shore.posts().get(p);
                PadLoad load = PadLoad.on(
                        post.type(),
                        greatest,
                        factored,
                        plan.circumstances().limits().plumb());
                posts.add(new Loaded(post, shore.name(), shore.y(), load, least));
            }
        }
        return posts;
    }

    private static PostResult of(SituationResult situation, int shore, int post) {
        return situation.posts().stream()
                .filter(r -> r.place().shore() == shore && r.place().post() == post)
                .findFirst()
                .orElseThrow();
    }

    private static JobPlan fitted(JobPlan plan, PadSizing sizing) {
        List<Shore> shores = new ArrayList<>();
        int next = 0;
        for (Shore shore : plan.shores()) {
            List<Post> posts = new ArrayList<>();
            for (int p = 0; p < shore.posts().size(); p++) {
                PostSizing found = sizing.posts().get(next++);
                posts.add(
                        found.proposals().isEmpty()
                                ? shore.posts().get(p)
                                : found.proposals().get(0).trial().standing().post());
            }
            shores.add(new Shore(
                    shore.name(),
                    shore.y(),
                    shore.beam(),
                    shore.start(),
                    shore.length(),
                    shore.gaps(),
                    posts,
                    shore.bracing(),
                    shore.assembly()));
        }
        return new JobPlan(plan.basis(), plan.floor(), shores, plan.ground(), plan.situations(), plan.circumstances());
    }
}
