package dev.underprop.app.report;

import dev.underprop.wire.door.Documents;
import dev.underprop.wire.record.Extent;

/** A record a line, then the sum on a last line that says whether the run was complete. */
final class NdjsonReport implements Report {
    private final Sink sink;
    private final Extent extent;

    NdjsonReport(Sink sink, Extent extent) {
        this.sink = sink;
        this.extent = extent;
    }

    @Override
    public Runnable prepare(Judgement judgement) {
        byte[] record = Documents.json(Records.of(judgement, extent), false);
        return () -> sink.write(record);
    }

    /** A run that was stopped leaves its lines too: the last one says so. */
    @Override
    public void complete(End end) {
        sink.write(end.tally().sum().last(end.complete()));
        sink.complete();
    }

    @Override
    public void close() {
        sink.close();
    }
}
