package dev.underprop.engine.plan;

import java.util.List;

/**
 * The floor.
 *
 * @param joists in order of x, then y
 * @param bearings what the joists rest on besides the shores
 * @param loads what lies on the floor and on the shores
 * @param joistWeight whether the joists' own weight comes on top of the loads or is part of the dead load given
 */
public record Floor(List<Joist> joists, List<Bearing> bearings, List<Load> loads, JoistWeight joistWeight) {

    /** Where the weight of the joists themselves is counted. */
    public enum JoistWeight {
        INCLUDED_IN_DEAD,
        ADDED
    }

    public Floor {
        joists = List.copyOf(joists);
        bearings = List.copyOf(bearings);
        loads = List.copyOf(loads);
    }
}
