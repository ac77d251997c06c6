package dev.underprop.app.report;

import dev.underprop.wire.door.Documents;
import dev.underprop.wire.record.Extent;

/** A JSON array of records. */
final class JsonReport implements Report {
    private final Sink sink;
    private final Extent extent;
    private boolean first = true;

    JsonReport(Sink sink, Extent extent) {
        this.sink = sink;
        this.extent = extent;
    }

    @Override
    public Runnable prepare(Judgement judgement) {
        byte[] record = Documents.json(Records.of(judgement, extent), true);
        return () -> {
            sink.write(first ? "[\n" : ",\n");
            first = false;
            // Without the end of line that a document has.
            sink.write(record, record.length - 1);
        };
    }

    @Override
    public void complete(End end) {
        sink.write(first ? "[]\n" : "\n]\n");
        if (end.complete()) {
            sink.complete();
        }
    }

    @Override
    public void close() {
        sink.close();
    }
}
