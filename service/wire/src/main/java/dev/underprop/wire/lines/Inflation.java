package dev.underprop.wire.lines;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * The bytes that come out of an archive, counted against those that go in, so that a small file that unpacks to a huge one is
 * stopped in time.
 */
public final class Inflation extends FilterInputStream {
    /** Plans of one archive shrink by 10 to 60 times; deflate can do a thousand. */
    static final int RATIO = 200;

    /** Below this much nothing hurts (bytes). */
    static final long FREE = 64L << 20;

    /** Said when an archive grows too much. */
    public static final class Bomb extends IOException {
        private final long inflated;
        private final long packed;

        Bomb(long inflated, long packed) {
            super(inflated + " bytes out of " + packed);
            this.inflated = inflated;
            this.packed = packed;
        }

        long inflated() {
            return inflated;
        }

        long packed() {
            return packed;
        }
    }

    private final Counted packed;
    private long inflated;

    /** Counts what is read from a stream. */
    public Inflation(InputStream in, Counted packed) {
        super(in);
        this.packed = packed;
    }

    @Override
    public int read() throws IOException {
        int one = super.read();
        count(one < 0 ? 0 : 1);
        return one;
    }

    @Override
    public int read(byte[] bytes, int from, int length) throws IOException {
        int got = super.read(bytes, from, length);
        count(Math.max(0, got));
        return got;
    }

    @Override
    public long skip(long wanted) throws IOException {
        long skipped = super.skip(wanted);
        count(skipped);
        return skipped;
    }

    private void count(long more) throws IOException {
        inflated += more;
        if (inflated > FREE && inflated > RATIO * packed.count()) {
            throw new Bomb(inflated, packed.count());
        }
    }

    /** Does not close what it reads from: the next entry follows. */
    @Override
    public void close() {}
}
