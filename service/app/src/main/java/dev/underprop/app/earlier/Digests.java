package dev.underprop.app.earlier;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * Many texts by 128 bits of their SHA-256, numbered as they come: some 32 bytes a text however long it is. The table is cut into many
 * small ones that grow one by one and by half, so that growing never takes much at a time. Any number of threads may look up while
 * none adds.
 */
public final class Digests {
    private static final int TABLES = 64;

    private final Table[] tables = new Table[TABLES];
    private int size;

    /** No text yet. */
    public Digests() {
        for (int i = 0; i < TABLES; i++) {
            tables[i] = new Table();
        }
    }

    /** Texts so far. */
    public int size() {
        return size;
    }

    /** The number of a text, from 0; {@link #size} as it was before when the text is new. */
    public int add(String text) {
        Digest digest = Digest.of(text);
        int number = table(digest).add(digest, size);
        size = Math.max(size, number + 1);
        return number;
    }

    /** The number of a text; below 0 when it was never added. */
    int find(String text) {
        Digest digest = Digest.of(text);
        return table(digest).find(digest);
    }

    private Table table(Digest digest) {
        return tables[(int) (digest.high() & TABLES - 1)];
    }

    /**
     * The beginning of a text's SHA-256.
     *
     * @param high first 64 bits
     * @param low next 64 bits
     */
    record Digest(long high, long low) {
        static Digest of(String text) {
            try {
                ByteBuffer sha = ByteBuffer.wrap(
                        MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
                return new Digest(sha.getLong(), sha.getLong());
            } catch (NoSuchAlgorithmException e) {
                throw new IllegalStateException("every Java has SHA-256", e);
            }
        }
    }

    /** Texts that share a few bits; three of four places are taken at the most. */
    private static final class Table {
        private static final int START = 16;

        private long[] high = new long[START];
        private long[] low = new long[START];
        /** One more than the number; 0 where nothing is. */
        private int[] next = new int[START];

        private int taken;

        int find(Digest digest) {
            return next[slot(digest.high(), digest.low())] - 1;
        }

        int add(Digest digest, int number) {
            if (4 * (taken + 1) > 3 * next.length) {
                grow();
            }
            int slot = slot(digest.high(), digest.low());
            if (next[slot] == 0) {
                put(slot, digest.high(), digest.low(), number + 1);
                taken++;
            }
            return next[slot] - 1;
        }

        private void put(int slot, long one, long other, int mark) {
            high[slot] = one;
            low[slot] = other;
            next[slot] = mark;
        }

        private int slot(long one, long other) {
            int slot = (int) Long.remainderUnsigned(other, next.length);
            while (next[slot] != 0 && (high[slot] != one || low[slot] != other)) {
                slot = slot + 1 == next.length ? 0 : slot + 1;
            }
            return slot;
        }

        private void grow() {
            long[] ones = high;
            long[] others = low;
            int[] marks = next;
            int length = Math.addExact(marks.length, marks.length / 2);
            high = new long[length];
            low = new long[length];
            next = new int[length];
            for (int i = 0; i < marks.length; i++) {
                if (marks[i] != 0) {
                    put(slot(ones[i], others[i]), ones[i], others[i], marks[i]);
                }
            }
        }
    }
}
