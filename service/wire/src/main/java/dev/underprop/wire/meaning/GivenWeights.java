package dev.underprop.wire.meaning;

import dev.underprop.api.model.Bearing;
import dev.underprop.api.model.JobPlan;
import dev.underprop.api.model.Joist;
import dev.underprop.api.model.Shore;
import dev.underprop.engine.plan.Floor;
import dev.underprop.wire.fault.Fault;
import java.util.ArrayList;
import java.util.List;

/** Weights that the plan gives in place of those that follow from the catalogue, in words: nobody but the plan vouches for them. */
final class GivenWeights {

    private GivenWeights() {}

    static List<String> of(JobPlan model, Floor floor) {
        List<String> list = new ArrayList<>();
        for (Shore shore : model.getShores()) {
            String weight = shore.getBeam().getWeight();
            if (weight != null) {
                list.add(said("The beam of shore " + Fault.shown(shore.getName()) + " weighs ", weight));
            }
        }
        for (Bearing bearing : model.getFloor().getBearings()) {
            String weight = bearing.getBeam() == null ? null : bearing.getBeam().getWeight();
            if (weight != null) {
                list.add(said("The beam of girder " + Fault.shown(bearing.getName()) + " weighs ", weight));
            }
        }
        if (floor.joistWeight() == Floor.JoistWeight.ADDED) {
            addJoists(model, list);
        }
        return list;
    }

    /** Joists whose weight is part of the dead load have none of their own. */
    private static void addJoists(JobPlan model, List<String> list) {
        String usual = model.getFloor().getJoists().getWeight();
        if (usual != null) {
            list.add(said("Joists for which nothing else is said weigh ", usual));
        }
        List<Joist> each = model.getFloor().getJoists().getEach();
        for (Joist joist : each == null ? List.<Joist>of() : each) {
            if (joist.getWeight() != null) {
                list.add(said("The joist at " + Fault.shown(joist.getAt()) + " weighs ", joist.getWeight()));
            }
        }
    }

    private static String said(String what, String weight) {
        return what + Fault.shown(weight)
                + " as the plan gives it, in place of the weight computed from size and species.";
    }
}
