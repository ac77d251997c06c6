package dev.underprop.engine.check;

/** What kind of quantity a demand and its capacity are; both are in SI. */
public enum Measure {
    /** Force (N). */
    FORCE,
    /** Stress in a member (Pa). */
    STRESS,
    /** Pressure on the ground (Pa). */
    PRESSURE,
    /** Deflection (m). */
    DEFLECTION,
    /** Moment (N·m). */
    MOMENT
}
