package dev.underprop.app.batch;

import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.Outcome;
import java.util.Iterator;
import java.util.Optional;

/** What there is to do for each entry: have it judged, or take its outcome from the journal of a run that was broken off. */
final class Work implements AutoCloseable {
    private final PlanJudge judge;
    private final Optional<Journal> journal;

    Work(PlanJudge judge, Optional<Journal> journal) {
        this.judge = judge;
        this.journal = journal;
    }

    /** An entry with what the journal knows of it. */
    private record Known(Entry entry, Optional<byte[]> packed) {}

    /** What became of an entry, and the frame that the journal lacks. */
    record Done(Outcome outcome, Optional<byte[]> frame) {}

    /** A thing to be done on any thread. */
    interface Task {
        /** Does it. */
        Done run();
    }

    /** Tasks in the order of the input. */
    Iterator<Task> tasks(Iterator<Entry> entries) {
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return entries.hasNext();
            }

            @Override
            public Task next() {
                Entry entry = entries.next();
                Known known = new Known(entry, journal.flatMap(all -> all.known(entry)));
                return () -> done(known);
            }
        };
    }

    private Done done(Known known) {
        if (known.packed().isPresent()) {
            return new Done(Packing.unpack(known.entry(), known.packed().get(), judge.lines()), Optional.empty());
        }
        Outcome outcome = judge.judge(known.entry());
        return new Done(outcome, journal.map(all -> Journal.bytes(Frame.digest(known.entry()), Packing.pack(outcome))));
    }

    /** Notes what became of an entry, in the order of the input. */
    void done(Optional<byte[]> frame) {
        frame.ifPresent(bytes -> journal.ifPresent(all -> all.add(bytes)));
    }

    @Override
    public void close() {
        journal.ifPresent(Journal::close);
    }
}
