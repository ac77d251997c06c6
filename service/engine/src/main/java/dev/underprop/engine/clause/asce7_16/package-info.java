/** ASCE 7-16, minimum design loads: kinds of load, and how they act together in allowable stress design. */
@NullMarked
package dev.underprop.engine.clause.asce7_16;

import org.jspecify.annotations.NullMarked;
