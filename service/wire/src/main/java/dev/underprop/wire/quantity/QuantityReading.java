package dev.underprop.wire.quantity;

import dev.underprop.wire.fault.Fault;

/** What came of reading one quantity: a number in SI, or the fault that forbids it. */
public sealed interface QuantityReading {
    /**
     * The quantity was read.
     *
     * @param si its value in the SI unit of the wanted dimension, finite
     */
    record Value(double si) implements QuantityReading {}

    /**
     * The quantity was refused.
     *
     * @param fault why, and what to write instead; pointer, line and column are still to be said
     */
    record Refused(Fault fault) implements QuantityReading {}
}
