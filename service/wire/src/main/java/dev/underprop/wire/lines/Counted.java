package dev.underprop.wire.lines;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Bytes counted as they are read. */
public final class Counted extends FilterInputStream {
    private long count;

    /** Counts what is read from a stream. */
    public Counted(InputStream in) {
        super(in);
    }

    /** Bytes read so far. */
    public long count() {
        return count;
    }

    @Override
    public int read() throws IOException {
        int one = super.read();
        count += one < 0 ? 0 : 1;
        return one;
    }

    @Override
    public int read(byte[] bytes, int from, int length) throws IOException {
        int got = super.read(bytes, from, length);
        count += Math.max(0, got);
        return got;
    }

    @Override
    public long skip(long wanted) throws IOException {
        long skipped = super.skip(wanted);
        count += skipped;
        return skipped;
    }
}
