package dev.underprop.wire.lines;

import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.tree.Format;
import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;

/** Plans of which each is a line of JSON; blank lines are counted and passed over. */
public final class PlanLines implements Closeable {
    private static final byte[] UTF8_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};
    private static final int BUFFER = 1 << 16;

    private final InputStream in;
    private final String name;
    private final boolean packed;
    private final long end;
    private Optional<LineReader> lines = Optional.empty();
    private int line;
    private boolean found;
    private boolean over;

    /**
     * Plans of a stream.
     *
     * @param in where they are read
     * @param name the file
     * @param packed whether they are packed by gzip
     * @param allowEmpty whether it is as it should be when there is none; otherwise that is a fault
     */
    public PlanLines(InputStream in, String name, boolean packed, boolean allowEmpty) {
        this(in, name, packed, allowEmpty, 0, Long.MAX_VALUE);
    }

    /**
     * The plans of a part of a file that is not packed: those whose lines begin in it.
     *
     * @param in stands where a line begins
     * @param name the file
     * @param before lines of the file before
     * @param length bytes from where {@code in} stands to the end of the part
     */
    public static PlanLines part(InputStream in, String name, int before, long length) {
        return new PlanLines(in, name, false, true, before, length);
    }

    private PlanLines(InputStream in, String name, boolean packed, boolean allowEmpty, int before, long end) {
        this.in = in;
        this.name = name;
        this.packed = packed;
        this.found = allowEmpty;
        this.line = before;
        this.end = end;
    }

    /**
     * The next plan, what is wrong in its place, or nothing at the end.
     *
     * @throws IOException when reading fails; what is packed and cannot be unpacked is a fault instead
     */
    public Optional<Entry> next() throws IOException {
        if (over) {
            return Optional.empty();
        }
        try {
            Optional<Entry> next = read();
            found |= next.isPresent();
            return next;
        } catch (Inflation.Bomb e) {
            over = true;
            return Optional.of(new Entry.Wrong(here(), PackedFaults.bomb(e)));
        } catch (ZipException | EOFException e) {
            if (!packed) {
                throw e;
            }
            over = true;
            return Optional.of(new Entry.Wrong(here(), PackedFaults.broken(e)));
        }
    }

    /** Where the line stands that would be read next. */
    public EntryName here() {
        return new EntryName(name, line + 1);
    }

    private Optional<Entry> read() throws IOException {
        Optional<byte[]> text = line();
        while (text.isPresent()) {
            line++;
            byte[] bytes = line == 1 ? withoutMark(text.get()) : text.get();
            if (line == 1 && utf16(bytes)) {
                over = true;
                return Optional.of(new Entry.Wrong(EntryName.file(name), PackedFaults.utf16Lines()));
            }
            if (!LineReader.blank(bytes)) {
                return Optional.of(new Entry.Text(new EntryName(name, line), Format.JSON, bytes));
            }
            text = line();
        }
        over = true;
        return found ? Optional.empty() : Optional.of(new Entry.Wrong(EntryName.file(name), PackedFaults.emptyLines()));
    }

    private Optional<byte[]> line() throws IOException {
        LineReader reader = lines.isPresent() ? lines.get() : open();
        return reader.position() < end ? reader.next() : Optional.empty();
    }

    /** Opened late, since the head of what is packed is read at once. */
    private LineReader open() throws IOException {
        Counted counted = new Counted(in);
        LineReader reader = new LineReader(packed ? new Inflation(new GZIPInputStream(counted, BUFFER), counted) : in);
        lines = Optional.of(reader);
        return reader;
    }

    private static byte[] withoutMark(byte[] bytes) {
        boolean marked = bytes.length >= UTF8_MARK.length
                && bytes[0] == UTF8_MARK[0]
                && bytes[1] == UTF8_MARK[1]
                && bytes[2] == UTF8_MARK[2];
        return marked ? Arrays.copyOfRange(bytes, UTF8_MARK.length, bytes.length) : bytes;
    }

    /** True for a first line in UTF-16: its mark, or a zero among the first bytes, which no JSON in UTF-8 holds. */
    public static boolean utf16(byte[] bytes) {
        boolean zero = bytes.length > 1 && (bytes[0] == 0 || bytes[1] == 0);
        int first = bytes.length > 1 ? (bytes[0] & 0xFF) << 8 | bytes[1] & 0xFF : 0;
        return zero || first == 0xFEFF || first == 0xFFFE;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
