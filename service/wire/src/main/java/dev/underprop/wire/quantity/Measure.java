package dev.underprop.wire.quantity;

/**
 * A number of units, as written.
 *
 * @param number how many
 * @param unit of what
 */
record Measure(Exact number, Unit unit) {
    Measure negated() {
        return new Measure(number.negated(), unit);
    }
}
