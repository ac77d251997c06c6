/**
 * Files that hold a plan a line, plain or packed, as they stream by. {@link dev.underprop.wire.lines.PlanLines} gives the plans.
 */
@NullMarked
package dev.underprop.wire.lines;

import org.jspecify.annotations.NullMarked;
