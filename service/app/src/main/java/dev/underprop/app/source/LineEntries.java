package dev.underprop.app.source;

import dev.underprop.wire.tree.Format;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Optional;

/** Plans of which each is a line of JSON; blank lines are counted and passed over. */
final class LineEntries extends Entries {
    private static final byte[] UTF8_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final LineReader lines;
    private final String name;
    private final boolean allowEmpty;
    private int line;
    private boolean found;
    private boolean over;

    LineEntries(InputStream in, String name, boolean allowEmpty) {
        this.lines = new LineReader(in);
        this.name = name;
        this.allowEmpty = allowEmpty;
    }

    @Override
    protected Optional<Entry> advance() {
        if (over) {
            return Optional.empty();
        }
        try {
            Optional<Entry> next = read();
            found |= next.isPresent();
            return next;
        } catch (IOException e) {
            over = true;
            return Optional.of(new Entry.Wrong(new EntryName(name, line + 1), Faults.of(e)));
        }
    }

    private Optional<Entry> read() throws IOException {
        Optional<byte[]> text = lines.next();
        while (text.isPresent()) {
            line++;
            byte[] bytes = line == 1 ? withoutMark(text.get()) : text.get();
            if (line == 1 && utf16(bytes)) {
                over = true;
                return Optional.of(new Entry.Wrong(EntryName.file(name), Faults.utf16Lines()));
            }
            if (!LineReader.blank(bytes)) {
                return Optional.of(new Entry.Text(new EntryName(name, line), Format.JSON, bytes));
            }
            text = lines.next();
        }
        over = true;
        return found || allowEmpty
                ? Optional.empty()
                : Optional.of(new Entry.Wrong(EntryName.file(name), Faults.emptyLines()));
    }

    private static byte[] withoutMark(byte[] bytes) {
        boolean marked = bytes.length >= UTF8_MARK.length
                && bytes[0] == UTF8_MARK[0]
                && bytes[1] == UTF8_MARK[1]
                && bytes[2] == UTF8_MARK[2];
        return marked ? Arrays.copyOfRange(bytes, UTF8_MARK.length, bytes.length) : bytes;
    }

    /** A mark of UTF-16, or a zero among the first bytes, which no JSON in UTF-8 holds. */
    private static boolean utf16(byte[] bytes) {
        boolean zero = bytes.length > 1 && (bytes[0] == 0 || bytes[1] == 0);
        int first = bytes.length > 1 ? (bytes[0] & 0xFF) << 8 | bytes[1] & 0xFF : 0;
        return zero || first == 0xFEFF || first == 0xFFFE;
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
