package dev.underprop.engine.pad;

import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;

/** How far a pad sinks into the ground under its load: modulus of subgrade reaction times area. The pad itself is rigid. */
public final class GroundStiffness {

    private GroundStiffness() {}

    /**
     * Soft and stiff spring of a pad on its ground. What the plan gives holds; else the range of the class of undisturbed
     * ground; else the widest range of the table, and its name says so.
     */
    public static Spring of(Ground ground, Pad pad) {
        Subgrade range = Subgrade.of(ground);
        return new Spring(range.soft() * pad.area(), range.stiff() * pad.area(), range.name(), range.citation());
    }

    /** Whether the range is more than the widest there is. */
    public static boolean known(Ground ground) {
        return Subgrade.of(ground).known();
    }
}
