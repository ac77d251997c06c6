package dev.underprop.app.source;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Bytes counted as they are read. */
final class Counted extends FilterInputStream {
    private long count;

    Counted(InputStream in) {
        super(in);
    }

    /** Bytes read so far. */
    long count() {
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
