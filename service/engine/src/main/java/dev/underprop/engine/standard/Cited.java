package dev.underprop.engine.standard;

/**
 * What a clause returns: a value with its symbol and the rule it came from.
 *
 * @param value in SI, or without dimension; finite
 * @param symbol as the document writes it
 * @param citation the rule
 */
public record Cited(double value, String symbol, Citation citation) {

    public Cited {
        Admissible.finite(value, symbol);
        if (symbol.isBlank()) {
            throw new IllegalArgumentException("a cited value has a symbol");
        }
    }
}
