package dev.underprop.engine.clause.nds2018;

/** How a sideways force on a fastener runs to the grain. */
public enum Grain {
    /** Along the grain. */
    PARALLEL,
    /** Across the grain. */
    PERPENDICULAR
}
