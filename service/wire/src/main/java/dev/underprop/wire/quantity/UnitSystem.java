package dev.underprop.wire.quantity;

/** The units in which results are given. */
public enum UnitSystem {
    /** Feet, inches, pounds. */
    US,
    /** Metres, millimetres, kilonewtons. */
    SI
}
