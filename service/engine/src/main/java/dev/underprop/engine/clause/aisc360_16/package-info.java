/** AISC 360-16, structural steel, by allowable strength. SI: N, m, Pa. What a limit refuses has no strength here. */
@NullMarked
package dev.underprop.engine.clause.aisc360_16;

import org.jspecify.annotations.NullMarked;
