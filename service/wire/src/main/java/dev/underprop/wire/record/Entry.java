package dev.underprop.wire.record;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.tree.Format;

/** One plan to be read, or what is wrong with a place where one was expected. */
public sealed interface Entry {

    /** Where it stands. */
    EntryName name();

    /**
     * The text of one plan, at most one byte longer than a plan may be: enough to see that it is too large.
     *
     * @param name where it stands
     * @param format how it is written
     * @param bytes the text; nobody changes it
     */
    @SuppressWarnings("ArrayRecordComponent") // a carrier that nobody compares
    record Text(EntryName name, Format format, byte[] bytes) implements Entry {}

    /**
     * There is no plan to be read.
     *
     * @param name where it was looked for
     * @param fault why
     */
    record Wrong(EntryName name, Fault fault) implements Entry {}
}
