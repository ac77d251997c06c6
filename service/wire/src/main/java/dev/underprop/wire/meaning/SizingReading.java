package dev.underprop.wire.meaning;

import dev.underprop.api.model.Pad;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.sizing.Candidate;
import dev.underprop.engine.sizing.Objective;
import dev.underprop.engine.sizing.Task;
import dev.underprop.wire.fault.Fault;
import java.util.List;
import java.util.Map;

/** What came of reading a request for pads. */
public sealed interface SizingReading {

    /**
     * Posts by their loads.
     *
     * @param task for the engine
     * @param pads the pads tried, by name, in the words of a plan
     * @param assumptions what was taken because the request does not say it, in words
     */
    record Loads(Task task, Map<String, Pad> pads, List<String> assumptions) implements SizingReading {
        public Loads {
            assumptions = List.copyOf(assumptions);
        }
    }

    /**
     * Posts of a plan.
     *
     * @param plan for the engine
     * @param stock pads to try
     * @param objective what is to be least
     * @param pads the pads tried, by name, in the words of a plan
     * @param assumptions what was taken because the request does not say it, in words
     */
    record OfPlan(
            JobPlan plan, List<Candidate> stock, Objective objective, Map<String, Pad> pads, List<String> assumptions)
            implements SizingReading {
        public OfPlan {
            stock = List.copyOf(stock);
            assumptions = List.copyOf(assumptions);
        }
    }

    /**
     * It does not make sense.
     *
     * @param faults all of them, without line and column
     */
    record Refused(List<Fault> faults) implements SizingReading {
        public Refused {
            faults = List.copyOf(faults);
        }
    }
}
