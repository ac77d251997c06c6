package dev.underprop.engine.lift;

import dev.underprop.engine.Halt;
import dev.underprop.engine.plan.JobPlan;
import java.util.List;

/**
 * Plans staged lifts. Pure: the same plan and request give the same answer, on any thread.
 *
 * <p>The lift goes in the fewest stages that its largest raise and the limit per stage allow, every post in proportion to its
 * own raise, so that no slope between neighbours goes anywhere but straight from as found to its target; within a stage in
 * the fewest passes in which every turn keeps every limit. That is a search by rule, not over all orders of turns: where it
 * finds no way there may still be one, and what it finds has been looked at turn by turn.
 */
public final class Lifter {

    private Lifter() {}

    /** What of a request does not fit its plan; a request with any is refused by {@link #plan}. */
    public static List<Misfit> misfits(JobPlan plan, LiftRequest request) {
        return List.copyOf(new Wanted(plan, request).misfits());
    }

    /**
     * Plans one lift.
     *
     * @throws IllegalArgumentException where the request does not fit the plan
     */
    public static LiftPlan plan(JobPlan plan, LiftRequest request) {
        return plan(plan, request, Halt.NEVER);
    }

    /**
     * Plans one lift as long as the answer is wanted.
     *
     * @param halt asked while turns are solved
     * @throws IllegalArgumentException where the request does not fit the plan
     * @throws dev.underprop.engine.Halted when nobody wants the answer any more
     */
    public static LiftPlan plan(JobPlan plan, LiftRequest request, Halt halt) {
        return new Planning(plan, request, halt).plan();
    }
}
