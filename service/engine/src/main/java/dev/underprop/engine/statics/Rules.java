package dev.underprop.engine.statics;

import java.util.BitSet;

/**
 * What holds of the contacts in one solve, whatever the frame says: one assembly serves every situation of a job. Equal by
 * value.
 *
 * @param absent contacts that are not there and never close: a bearing taken away, a shore not yet set; a carrier all of
 *     whose contacts are absent is itself not there, with its loads
 * @param fastened contacts that can also pull, in place of the frame's own flags; one that is absent cannot
 */
public record Rules(BitSet absent, BitSet fastened) {

    public Rules {
        absent = (BitSet) absent.clone();
        fastened = (BitSet) fastened.clone();
    }

    /** The frame's own flags, and nothing absent. */
    public static Rules of(Frame frame) {
        BitSet fastened = new BitSet();
        for (int c = 0; c < frame.contacts().size(); c++) {
            fastened.set(c, frame.contacts().get(c).fastened());
        }
        return new Rules(new BitSet(), fastened);
    }

    @Override
    public BitSet absent() {
        return (BitSet) absent.clone();
    }

    @Override
    public BitSet fastened() {
        return (BitSet) fastened.clone();
    }

    boolean isAbsent(int contact) {
        return absent.get(contact);
    }

    boolean canPull(int contact) {
        return fastened.get(contact) && !absent.get(contact);
    }
}
