package dev.underprop.engine.clause.asce7_16;

import dev.underprop.engine.clause.nds2018.Section2.Duration;

/**
 * Loads that act together.
 *
 * @param name as the document writes it
 * @param dead factor of dead load
 * @param live factor of floor live load
 * @param roofLive factor of roof live load
 * @param snow factor of snow
 * @param duration the shortest-lasting load in it
 */
public record Combination(String name, double dead, double live, double roofLive, double snow, Duration duration) {}
