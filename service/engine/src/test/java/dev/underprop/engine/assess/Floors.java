package dev.underprop.engine.assess;

import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Load;
import java.util.List;

/** Floors for tests of other rooms. */
public final class Floors {

    private Floors() {}

    /** The reference floor under so many times its area load; tied down at the girder it stands with the sill out. */
    public static JobPlan reference(boolean tied, double times) {
        Fastening girder = tied ? new Fastening.Held(5_000, "ties") : new Fastening.Loose();
        JobPlan plan = Plans.reference(girder, Plans.RIGID);
        List<Load> loads =
                List.of(Plans.area(12 * times, 40 * times), plan.floor().loads().get(1));
        Floor floor =
                new Floor(plan.floor().joists(), plan.floor().bearings(), loads, Floor.JoistWeight.INCLUDED_IN_DEAD);
        return new JobPlan(plan.basis(), floor, plan.shores(), plan.ground(), plan.situations(), plan.circumstances());
    }
}
