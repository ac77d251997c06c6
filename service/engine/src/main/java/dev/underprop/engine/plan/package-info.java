/**
 * What the engine is asked: one job plan in SI units, every name already resolved, every value already checked for
 * sense. {@link dev.underprop.engine.plan.JobPlan} is the door. What a plan does not say is a value of its own kind
 * ({@code Unstated}, {@code NotGiven}), never a guess.
 *
 * <p>Axes: x along the shores, y along the joists, z up. Lengths in m, forces in N, pressures in Pa.
 */
package dev.underprop.engine.plan;
