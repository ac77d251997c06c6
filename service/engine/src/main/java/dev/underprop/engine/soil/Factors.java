package dev.underprop.engine.soil;

/**
 * Factors of bearing capacity of one author.
 *
 * @param cohesion Nc
 * @param overburden Nq
 * @param weight N gamma
 */
public record Factors(double cohesion, double overburden, double weight) {}
