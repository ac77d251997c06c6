package dev.underprop.engine.statics;

import java.util.BitSet;

/** A contact state of which there is one object only, so that states are told apart at a glance. */
final class KnownState {

    /** None yet. */
    static final KnownState NONE = new KnownState(new Closure(new BitSet(), new BitSet()));

    private final Closure closure;

    KnownState(Closure closure) {
        this.closure = closure;
    }

    Closure closure() {
        return closure;
    }
}
