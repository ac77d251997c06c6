/**
 * Which of the pads at hand will do under which post. Every pad is judged by the checks of {@code engine.pad}; what is proposed
 * passes there. Doors: {@link dev.underprop.engine.sizing.PadSizer} for loads, {@link
 * dev.underprop.engine.sizing.PlanSizer} for a plan.
 */
@NullMarked
package dev.underprop.engine.sizing;

import org.jspecify.annotations.NullMarked;
