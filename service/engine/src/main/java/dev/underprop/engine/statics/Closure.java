package dev.underprop.engine.statics;

import java.util.BitSet;

/**
 * What a contact state is known by.
 *
 * @param closed contacts that press; not to be changed
 * @param away carriers that are not there; not to be changed
 */
record Closure(BitSet closed, BitSet away) {

    boolean gone(int carrier) {
        return away.get(carrier);
    }

    /** The same structure with other contacts closed. */
    Closure with(BitSet nowClosed) {
        return new Closure(nowClosed, away);
    }
}
