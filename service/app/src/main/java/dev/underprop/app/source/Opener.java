package dev.underprop.app.source;

import dev.underprop.wire.lines.FileKind;
import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.tree.Limits;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Opens a file as what its name says that it holds.
 *
 * @param rules which entries of archives are taken
 * @param allowEmpty whether a place without plans is as it should be
 * @param meter counts what is read
 */
record Opener(Selection.Rules rules, boolean allowEmpty, Meter meter) {
    /** At most one byte more than a plan may have: enough for the door to see that it is too large. */
    private static final int MOST = Limits.USUAL.bytes() + 1;

    /** The entries of a file, opened when the first is asked for. */
    Entries open(Path path, String name) {
        FileKind kind = FileKind.of(name);
        EntryName whole = EntryName.file(name);
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            return Entries.of(new Entry.Wrong(whole, Faults.notFile()));
        }
        if (kind == FileKind.OTHER) {
            return Entries.of(new Entry.Wrong(whole, Faults.notNamedAsPlan()));
        }
        try {
            return kind.archive() || kind.lines()
                    ? many(meter.metered(Files.newInputStream(path)), kind, name)
                    : Entries.of(new Entry.Text(whole, kind.format(), text(path)));
        } catch (IOException e) {
            return Entries.of(new Entry.Wrong(whole, Faults.of(e)));
        }
    }

    /** The entries of an archive or of lines. */
    Entries many(InputStream in, FileKind kind, String name) {
        return kind.lines()
                ? new LineEntries(in, name, kind == FileKind.LINES_GZ, allowEmpty)
                : new ArchiveEntries(in, kind, name, this);
    }

    private byte[] text(Path path) throws IOException {
        try (InputStream in = meter.metered(Files.newInputStream(path))) {
            return text(in);
        }
    }

    static byte[] text(InputStream in) throws IOException {
        return in.readNBytes(MOST);
    }
}
