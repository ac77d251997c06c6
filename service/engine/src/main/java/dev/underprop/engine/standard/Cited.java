package dev.underprop.engine.standard;

/**
 * A value taken from a rule, with its symbol and the rule.
 *
 * @param value in SI, or without dimension
 * @param symbol as the document writes it
 * @param citation the rule
 */
public record Cited(double value, String symbol, Citation citation) {}
