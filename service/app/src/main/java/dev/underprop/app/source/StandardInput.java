package dev.underprop.app.source;

import dev.underprop.wire.lines.FileKind;
import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.tree.Limits;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The standard input and what it holds: as the user says, or as its first bytes show. */
public final class StandardInput {
    /** What a user can say. */
    public static final List<String> KINDS =
            List.of("auto", "yaml", "json", "ndjson", "ndjson.gz", "zip", "tar", "tar.gz");

    private static final String NAME = Sources.STANDARD_INPUT;

    private final InputStream in;
    private final String kind;

    /**
     * The standard input.
     *
     * @param in what to read; must be able to go back to a mark
     * @param kind one of {@link #KINDS}
     */
    public StandardInput(InputStream in, String kind) {
        if (!KINDS.contains(kind) || !in.markSupported()) {
            throw new IllegalArgumentException("not a kind of input, or no way back in it: " + kind);
        }
        this.in = in;
        this.kind = kind;
    }

    Entries entries(Opener opener) {
        try {
            FileKind found = kind.equals("auto") ? guess() : FileKind.of("x." + kind.toLowerCase(Locale.ROOT));
            return found.archive() || found.lines()
                    ? opener.many(in, found, NAME)
                    : Entries.of(new Entry.Text(EntryName.file(NAME), found.format(), Opener.text(in)));
        } catch (IOException e) {
            return Entries.of(new Entry.Wrong(EntryName.file(NAME), Faults.of(e)));
        }
    }

    private FileKind guess() throws IOException {
        in.mark(Limits.USUAL.bytes() + 1);
        byte[] first = in.readNBytes(Limits.USUAL.bytes());
        in.reset();
        return guess(first).orElse(FileKind.YAML);
    }

    /** Archives by their first bytes; a whole object on the first line with more behind it is a plan a line. */
    static Optional<FileKind> guess(byte[] first) {
        if (starts(first, 'P', 'K', 3, 4)) {
            return Optional.of(FileKind.ZIP);
        }
        if (starts(first, 0x1F, 0x8B)) {
            return Optional.of(FileKind.TAR_GZ);
        }
        int at = 0;
        while (at < first.length && first[at] <= ' ' && first[at] >= 0) {
            at++;
        }
        if (at == first.length || first[at] != '{') {
            return Optional.empty();
        }
        return Optional.of(lines(first, at) ? FileKind.LINES : FileKind.JSON);
    }

    private static boolean starts(byte[] bytes, int... wanted) {
        for (int i = 0; i < wanted.length; i++) {
            if (bytes.length <= i || (bytes[i] & 0xFF) != wanted[i]) {
                return false;
            }
        }
        return true;
    }

    /** True when the object that begins at a place is closed on its line and another begins after it. */
    private static boolean lines(byte[] bytes, int from) {
        int depth = 0;
        boolean quoted = false;
        int at = from;
        while (at < bytes.length && bytes[at] != '\n') {
            byte b = bytes[at];
            if (quoted && b == '\\') {
                at++;
            } else if (b == '"') {
                quoted = !quoted;
            } else if (!quoted) {
                depth += b == '{' ? 1 : b == '}' ? -1 : 0;
            }
            at++;
        }
        while (at < bytes.length && bytes[at] <= ' ' && bytes[at] >= 0) {
            at++;
        }
        return depth == 0 && at < bytes.length && bytes[at] == '{';
    }
}
