package dev.underprop.engine.material;

/**
 * The moisture a member of sawn lumber serves in. Source of the boundary: NDS 2018, 4.1.4, from memory.
 */
public enum Moisture {
    /** The content stays at or below 19 % for all but short periods. */
    DRY,
    /** The content exceeds 19 % for an extended time. */
    WET
}
