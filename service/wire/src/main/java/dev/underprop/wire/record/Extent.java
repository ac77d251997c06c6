package dev.underprop.wire.record;

/** How much a record tells. */
public enum Extent {
    /** The verdict and what led to it. */
    BRIEF,
    /** The whole answer. */
    WHOLE
}
