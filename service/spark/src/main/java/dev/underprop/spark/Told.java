package dev.underprop.spark;

import dev.underprop.wire.door.Documents;
import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.record.Extent;
import dev.underprop.wire.record.Outcome;
import dev.underprop.wire.record.Outcomes;
import dev.underprop.wire.record.PlanRecords;
import dev.underprop.wire.record.Sum;
import java.io.Serializable;

/**
 * A plan that was judged.
 *
 * @param key what it is known by
 * @param path the file it stands in
 * @param line its line, or 0
 * @param record its record, with the end of line
 * @param mark what it is counted by
 */
@SuppressWarnings("ArrayRecordComponent") // a carrier that nobody compares
record Told(String key, String path, int line, byte[] record, int mark) implements Serializable {

    static Told of(Outcome outcome, Extent extent) {
        return new Told(
                outcome.key(),
                outcome.name().path(),
                outcome.name().line(),
                Documents.json(PlanRecords.of(outcome, extent), false),
                Sum.mark(outcome));
    }

    /** Where it stands. */
    EntryName name() {
        return new EntryName(path, line);
    }

    /** What is told instead when its key was given before. */
    Told repeated(EntryName first, Extent extent) {
        return of(Outcomes.repeated(key, name(), first), extent);
    }
}
