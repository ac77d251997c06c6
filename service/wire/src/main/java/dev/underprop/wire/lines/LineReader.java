package dev.underprop.wire.lines;

import dev.underprop.wire.tree.Limits;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Optional;

/**
 * Lines as bytes, ended by LF or CR LF. Of a line that is too long for a plan only one byte more than a plan may have is kept, so
 * that no input makes it hold more than that.
 */
public final class LineReader implements Closeable {
    private static final int MOST = Limits.USUAL.bytes() + 1;
    private static final int CHUNK = 1 << 16;

    private final InputStream in;
    private final byte[] chunk = new byte[CHUNK];
    private final ByteArrayOutputStream line = new ByteArrayOutputStream();
    private int at;
    private int end;
    private boolean begun;
    private long before;

    /** A reader of lines. */
    public LineReader(InputStream in) {
        this.in = in;
    }

    /** True when reading on will most likely not wait for whoever writes. */
    public boolean ready() throws IOException {
        return at < end || in.available() > 0;
    }

    /** Bytes read so far: where the next line begins. */
    public long position() {
        return before + at;
    }

    /** The next line without its end, or nothing at the end of the input. */
    public Optional<byte[]> next() throws IOException {
        line.reset();
        begun = false;
        while (fill()) {
            begun = true;
            int stop = at;
            while (stop < end && chunk[stop] != '\n') {
                stop++;
            }
            line.write(chunk, at, Math.min(stop - at, MOST - Math.min(MOST, line.size())));
            boolean ended = stop < end;
            at = ended ? stop + 1 : stop;
            if (ended) {
                return Optional.of(taken());
            }
        }
        return begun ? Optional.of(taken()) : Optional.empty();
    }

    private byte[] taken() {
        byte[] bytes = line.toByteArray();
        boolean cr = bytes.length > 0 && bytes[bytes.length - 1] == '\r';
        return cr ? Arrays.copyOf(bytes, bytes.length - 1) : bytes;
    }

    private boolean fill() throws IOException {
        if (at < end) {
            return true;
        }
        before += end;
        at = 0;
        end = Math.max(0, in.read(chunk));
        return end > 0;
    }

    /** True when a line holds nothing but blanks. */
    public static boolean blank(byte[] bytes) {
        for (byte b : bytes) {
            if (b != ' ' && b != '\t' && b != '\r') {
                return false;
            }
        }
        return true;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
