package dev.underprop.app.source;

import dev.underprop.wire.record.Entry;
import java.io.Closeable;
import java.util.NoSuchElementException;
import java.util.Optional;

/** Entries one at a time, looked up only when asked for. */
abstract class Entries implements Closeable {
    private Optional<Entry> ahead = Optional.empty();

    /** The next entry, or nothing at the end. */
    protected abstract Optional<Entry> advance();

    final boolean hasNext() {
        if (ahead.isEmpty()) {
            ahead = advance();
        }
        return ahead.isPresent();
    }

    final Entry next() {
        if (!hasNext()) {
            throw new NoSuchElementException("no further entry");
        }
        Entry entry = ahead.orElseThrow();
        ahead = Optional.empty();
        return entry;
    }

    /** Nothing to be closed unless a subclass says so. */
    @Override
    public void close() {}

    /** A single entry. */
    static Entries of(Entry entry) {
        return new Entries() {
            private boolean given;

            @Override
            protected Optional<Entry> advance() {
                Optional<Entry> one = given ? Optional.empty() : Optional.of(entry);
                given = true;
                return one;
            }
        };
    }
}
