package dev.underprop.app.batch;

import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.EntryName;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Optional;
import java.util.zip.CRC32C;

/**
 * One plan of a journal.
 *
 * @param digest of where the plan stands and of its text
 * @param packed its outcome
 */
@SuppressWarnings("ArrayRecordComponent") // a carrier that nobody compares
record Frame(byte[] digest, byte[] packed) {
    private static final int DIGEST = 32;
    private static final int HEAD = Integer.BYTES + DIGEST + Long.BYTES;

    /** Reads what follows the length; nothing when it is not whole. */
    static Optional<Frame> read(DataInputStream in, int length) throws IOException {
        byte[] digest = in.readNBytes(DIGEST);
        if (digest.length < DIGEST) {
            return Optional.empty();
        }
        long checksum = in.readLong();
        byte[] packed = in.readNBytes(length);
        boolean whole = packed.length == length && checksum(packed) == checksum;
        return whole ? Optional.of(new Frame(digest, packed)) : Optional.empty();
    }

    /** Bytes of the whole frame. */
    int length() {
        return HEAD + packed.length;
    }

    static long checksum(byte[] bytes) {
        CRC32C crc = new CRC32C();
        crc.update(bytes);
        return crc.getValue();
    }

    /** SHA-256 over where an entry stands and what stands there. */
    static byte[] digest(Entry entry) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            EntryName name = entry.name();
            sha.update((name.path() + '\0' + name.line() + '\0').getBytes(StandardCharsets.UTF_8));
            if (entry instanceof Entry.Text text) {
                sha.update((text.format() + "\0").getBytes(StandardCharsets.UTF_8));
                sha.update(text.bytes());
            } else if (entry instanceof Entry.Wrong wrong) {
                sha.update(wrong.fault().toString().getBytes(StandardCharsets.UTF_8));
            }
            return sha.digest();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
