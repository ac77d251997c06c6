package dev.underprop.app.batch;

import dev.underprop.wire.record.EntryName;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Keys of the plans so far, each with where it stood. Keys are held as 128 bits of their SHA-256 in plain arrays, some 50 bytes a
 * plan; files that hold many plans share their path.
 */
final class SeenKeys {
    private static final int START = 1 << 10;

    private long[] high = new long[START];
    private long[] low = new long[START];
    private int[] lines = new int[START];
    private @Nullable String[] paths = new String[START];
    private int size;

    /** Notes a key; tells where it stood when it was noted before. */
    Optional<EntryName> add(String key, EntryName name) {
        if (2 * size >= high.length) {
            grow();
        }
        ByteBuffer digest = digest(key);
        long one = digest.getLong();
        long other = digest.getLong();
        int slot = slot(one, other);
        String path = paths[slot];
        if (path != null) {
            return Optional.of(new EntryName(path, lines[slot]));
        }
        put(slot, one, other, name.path(), name.line());
        size++;
        return Optional.empty();
    }

    /** Plans noted. */
    int size() {
        return size;
    }

    private void put(int slot, long one, long other, String path, int line) {
        high[slot] = one;
        low[slot] = other;
        paths[slot] = path;
        lines[slot] = line;
    }

    private int slot(long one, long other) {
        int mask = high.length - 1;
        int slot = (int) one & mask;
        while (paths[slot] != null && (high[slot] != one || low[slot] != other)) {
            slot = (slot + 1) & mask;
        }
        return slot;
    }

    private void grow() {
        long[] ones = high;
        long[] others = low;
        int[] oldLines = lines;
        @Nullable String[] oldPaths = paths;
        int length = 2 * ones.length;
        high = new long[length];
        low = new long[length];
        lines = new int[length];
        paths = new String[length];
        for (int i = 0; i < ones.length; i++) {
            if (oldPaths[i] != null) {
                put(slot(ones[i], others[i]), ones[i], others[i], oldPaths[i], oldLines[i]);
            }
        }
    }

    private static ByteBuffer digest(String key) {
        try {
            byte[] sha = MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8));
            return ByteBuffer.wrap(Arrays.copyOf(sha, 16));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
