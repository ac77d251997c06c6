package dev.underprop.wire.quantity;

import dev.underprop.wire.fault.Fault;

/** Leaves the scanner at the first fault; never leaves the package. */
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Fault fault;

    Refusal(Fault fault) {
        // Without a stack trace: it is control flow, and a batch may raise it often.
        super(fault.code(), null, false, false);
        this.fault = fault;
    }

    Fault fault() {
        return fault;
    }
}
