package dev.underprop.engine.clause.asce7_16;

/** Kinds of load that combinations tell apart (ASCE 7-16, 2.2), in the order in which reports list them. */
public enum LoadKind {
    /** D: what is always there. */
    DEAD("D"),
    /** L: people and things on a floor. */
    LIVE("L"),
    /** Lr: on a roof while it is worked on. */
    ROOF_LIVE("Lr"),
    /** S, at allowable-stress level. */
    SNOW("S"),
    /** W: the vertical part of wind, at the level of 7-16 (strength). */
    WIND("W"),
    /** Ev: the vertical part of earthquake, at strength level. */
    SEISMIC("Ev");

    private final String symbol;

    LoadKind(String symbol) {
        this.symbol = symbol;
    }

    /** Symbol in the combinations. */
    public String symbol() {
        return symbol;
    }
}
