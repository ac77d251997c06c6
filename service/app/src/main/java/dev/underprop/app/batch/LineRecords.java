package dev.underprop.app.batch;

import dev.underprop.wire.door.Documents;
import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.record.Extent;
import dev.underprop.wire.record.Outcome;
import dev.underprop.wire.record.Outcomes;
import dev.underprop.wire.record.PlanRecords;
import dev.underprop.wire.record.Sum;
import java.util.Optional;

/** The records of plans that come a line each, in their order, and the last record; on one thread. */
public final class LineRecords {
    private final Extent extent;
    private final SeenKeys keys = new SeenKeys();
    private final Sum sum = new Sum();

    /**
     * Records of some extent.
     *
     * @param extent how much a record tells
     */
    public LineRecords(Extent extent) {
        this.extent = extent;
    }

    /** The record of the next plan, with its end of line; a key that was given before is a fault. */
    public byte[] next(Outcome outcome) {
        Optional<EntryName> before = keys.add(outcome.key(), outcome.name());
        Outcome unique = before.map(first -> Outcomes.repeated(outcome.key(), outcome.name(), first))
                .orElse(outcome);
        sum.add(unique);
        return Documents.json(PlanRecords.of(unique, extent), false);
    }

    /** The last record, after which there is nothing. */
    public byte[] last() {
        return sum.last(true);
    }
}
