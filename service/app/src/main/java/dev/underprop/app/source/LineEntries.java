package dev.underprop.app.source;

import dev.underprop.wire.lines.PlanLines;
import dev.underprop.wire.record.Entry;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;

/** Plans of which each is a line of JSON; where reading fails, that is told in place of what would follow. */
final class LineEntries extends Entries {
    private final PlanLines lines;
    private boolean failed;

    LineEntries(InputStream in, String name, boolean packed, boolean allowEmpty) {
        this.lines = new PlanLines(in, name, packed, allowEmpty);
    }

    @Override
    protected Optional<Entry> advance() {
        if (failed) {
            return Optional.empty();
        }
        try {
            return lines.next();
        } catch (IOException e) {
            failed = true;
            return Optional.of(new Entry.Wrong(lines.here(), Faults.of(e)));
        }
    }

    @Override
    public void close() {
        try {
            lines.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
