/** ASCE 7-16, Minimum Design Loads: load combinations for allowable stress design. */
package dev.underprop.engine.clause.asce7_16;
