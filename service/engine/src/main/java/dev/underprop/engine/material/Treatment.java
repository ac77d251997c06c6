package dev.underprop.engine.material;

/** What was done to the wood against decay or fire. */
public enum Treatment {
    /** Nothing. */
    NONE,
    /** Preserved under pressure, not incised. */
    PRESERVED,
    /** Preserved, and incised to take the preservative. */
    INCISED,
    /** Fire retardant: its effect on strength is known to the treater alone. */
    FIRE_RETARDANT
}
