package dev.underprop.app.batch;

import dev.underprop.api.model.PlanCheckRecord;
import dev.underprop.app.report.Judgement;
import dev.underprop.app.report.Outcome;
import dev.underprop.app.report.Records;
import dev.underprop.app.report.Tally;
import dev.underprop.app.source.EntryName;
import dev.underprop.wire.door.Documents;
import java.util.Optional;

/** The records of plans that come a line each, in their order, and the last record; on one thread. */
public final class LineRecords {
    private final Records.Extent extent;
    private final SeenKeys keys = new SeenKeys();
    private final Tally tally = new Tally();

    /**
     * Records of some extent.
     *
     * @param extent how much a record tells
     */
    public LineRecords(Records.Extent extent) {
        this.extent = extent;
    }

    /** The record of the next plan, with its end of line; a key that was given before is a fault. */
    public byte[] next(Outcome outcome) {
        Optional<EntryName> before = keys.add(outcome.key(), outcome.name());
        Judgement judgement = Judgement.of(
                before.map(first -> PlanJudge.repeated(outcome, first.key())).orElse(outcome));
        tally.add(judgement);
        return Documents.json(Records.of(judgement, extent), false);
    }

    /** The last record, after which there is nothing. */
    public byte[] last() {
        return Documents.json(new PlanCheckRecord().summary(tally.summary()).complete(true), false);
    }
}
