package dev.underprop.wire.tree;

import dev.underprop.wire.fault.Fault;

/** A fault after which the rest of the document cannot be understood; never leaves the package. */
final class Stopped extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Fault fault;

    Stopped(Fault fault) {
        super(fault.code(), null, false, false);
        this.fault = fault;
    }

    Fault fault() {
        return fault;
    }
}
