package dev.underprop.wire.meaning;

import dev.underprop.engine.lift.LiftRequest;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.wire.fault.Fault;
import java.util.List;

/** What came of reading what a plan means. */
public sealed interface PlanReading {

    /**
     * The plan makes sense.
     *
     * @param plan for the engine
     * @param assumptions what was taken because the plan does not say it, in words
     * @param sizing what it asks of pads, at most one
     * @param lift the lift it asks for
     */
    record Understood(JobPlan plan, List<String> assumptions, List<SizingReading.OfPlan> sizing, Lift lift)
            implements PlanReading {
        public Understood {
            sizing = List.copyOf(sizing);
            assumptions = List.copyOf(assumptions);
        }
    }

    /**
     * It does not.
     *
     * @param faults all of them, without line and column
     */
    record Refused(List<Fault> faults) implements PlanReading {
        public Refused {
            faults = List.copyOf(faults);
        }
    }

    /** Whether a plan asks for a lift. */
    sealed interface Lift {}

    /** It does not. */
    record NoLift() implements Lift {}

    /**
     * It does.
     *
     * @param request for the engine
     */
    record Raised(LiftRequest request) implements Lift {}
}
