package dev.underprop.engine.standard;

/** What a clause with a limit of its own returns: a value, or the reason why it gives none. A limit is never clamped. */
public sealed interface Outcome {

    /**
     * The clause applies.
     *
     * @param cited the value
     */
    record Value(Cited cited) implements Outcome {}

    /**
     * The clause gives no value; a member that needs it has no capacity by this rule.
     *
     * @param reason one sentence, with the figure got and the limit
     * @param citation the clause that refuses
     */
    record Refused(String reason, Citation citation) implements Outcome {
        public Refused {
            if (reason.isBlank()) {
                throw new IllegalArgumentException("a refusal gives its reason");
            }
        }
    }

    /** A value as an outcome. */
    static Outcome of(double value, String symbol, Citation citation) {
        return new Value(new Cited(value, symbol, citation));
    }
}
