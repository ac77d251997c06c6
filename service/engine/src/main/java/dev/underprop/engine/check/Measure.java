package dev.underprop.engine.check;

import dev.underprop.engine.standard.Dimension;

/** What kind of quantity a demand and its capacity are; both are in SI. */
public enum Measure {
    /** Force (N). */
    FORCE(Dimension.FORCE),
    /** Stress in a member (Pa). */
    STRESS(Dimension.STRESS),
    /** Pressure on the ground (Pa). */
    PRESSURE(Dimension.STRESS),
    /** Deflection (m). */
    DEFLECTION(Dimension.LENGTH),
    /** Moment (N·m). */
    MOMENT(Dimension.MOMENT);

    private final Dimension dimension;

    Measure(Dimension dimension) {
        this.dimension = dimension;
    }

    /** The same, as calculation records have it. */
    public Dimension dimension() {
        return dimension;
    }
}
