package dev.underprop.engine.standard;

/**
 * One line of a calculation record.
 *
 * @param symbol unlike that of every other line of the record
 * @param meaning in words
 * @param dimension of the value
 * @param value in SI, finite
 * @param origin where the value comes from
 * @param formula how it follows from the lines above, empty where it does not. Names and signs are set apart by blanks;
 *     signs are {@code + - × / ^}, brackets, {@code min max root tan sin cos} with brackets and commas, numbers and π.
 */
public record Step(String symbol, String meaning, Dimension dimension, double value, Origin origin, String formula) {

    /** Where a value comes from. */
    public sealed interface Origin {}

    /** The plan says it, or it is a size that the plan leads to. */
    public record Plan() implements Origin {}

    /** What the analysis found in the case that governs. */
    public record Analysis() implements Origin {}

    /**
     * A rule gives it.
     *
     * @param citation the rule
     */
    public record Rule(Citation citation) implements Origin {}

    /** It follows from the lines above without a rule. */
    public record Arithmetic() implements Origin {}

    public Step {
        Admissible.finite(value, symbol);
        if (symbol.isBlank() || symbol.contains(" ") || meaning.isBlank()) {
            throw new IllegalArgumentException("a line has a symbol of one word, and a meaning");
        }
        if (origin instanceof Arithmetic && formula.isEmpty()) {
            throw new IllegalArgumentException(symbol + " follows from the lines above, so it says how");
        }
    }
}
