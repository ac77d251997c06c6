package dev.underprop.engine.assess;

import dev.underprop.engine.check.Bound;

/**
 * An extreme value over all cases of a situation and the case in which it arises.
 *
 * @param value in SI, sign as the holder says
 * @param at place along the member (m), NaN where the place is a point
 * @param combination name of the combination
 * @param pattern name of the live load pattern
 * @param bound how things were taken to be
 */
public record Extreme(double value, double at, String combination, String pattern, Bound bound) {}
