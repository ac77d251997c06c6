package dev.underprop.app.batch;

import dev.underprop.wire.record.Entry;
import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Optional;

/**
 * What was judged so far, in the order of the input, so that a run that was broken off can go on. A frame a plan: a digest of where
 * the plan stands and of its text, a checksum, and the packed outcome. A run that goes on takes outcomes from here as long as the
 * input is what it was; from the first plan that is another, or the first frame that is not whole, everything is judged anew. Reading
 * is a stream like the input, so that the journal costs no memory.
 */
final class Journal implements Closeable {
    private static final int MOST_FRAME = 1 << 28;
    private static final int FLUSH_EVERY = 64;

    private final FileChannel file;
    private final DataInputStream old;
    private boolean reading = true;
    private long good;
    private OutputStream out = OutputStream.nullOutputStream();
    private int written;

    private Journal(FileChannel file, DataInputStream old, long good) {
        this.file = file;
        this.old = old;
        this.good = good;
    }

    /**
     * Opens a journal, or begins one.
     *
     * @param path its file
     * @param maker what makes outcomes besides the plans: version, tables, options
     * @throws UncheckedIOException when it cannot be read and written, or is of another maker
     */
    static Journal open(String path, String maker) {
        byte[] head = (maker + '\n').getBytes(StandardCharsets.UTF_8);
        try {
            FileChannel file = FileChannel.open(
                    Path.of(path), StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            if (file.tryLock() == null) {
                throw new IOException("another run is using it");
            }
            // Not buffered beyond the frame: the place in the file must be known where reading ends.
            DataInputStream in = new DataInputStream(new Placed(Channels.newInputStream(file)));
            byte[] found = in.readNBytes(head.length);
            if (found.length > 0 && !Arrays.equals(found, head)) {
                throw new IOException("it belongs to a run of another version, other tables or other options;"
                        + " take it away to begin anew");
            }
            Journal journal = new Journal(file, in, found.length);
            if (found.length == 0) {
                journal.startWriting();
                journal.out.write(head);
            }
            return journal;
        } catch (IOException | OverlappingFileLockException e) {
            throw failed(path, e);
        }
    }

    /** The outcome of an entry, packed, when it was judged before; called in the order of the input. */
    Optional<byte[]> known(Entry entry) {
        if (!reading) {
            return Optional.empty();
        }
        Optional<Frame> frame = frame();
        if (frame.isPresent() && Arrays.equals(frame.get().digest(), Frame.digest(entry))) {
            good += frame.get().length();
            return Optional.of(frame.get().packed());
        }
        startWriting();
        return Optional.empty();
    }

    /** The next frame, unless the journal ends or is broken there. */
    private Optional<Frame> frame() {
        try {
            int length = old.readInt();
            if (length < 0 || length > MOST_FRAME) {
                return Optional.empty();
            }
            return Frame.read(old, length);
        } catch (EOFException e) {
            return Optional.empty();
        } catch (IOException e) {
            throw failed("", e);
        }
    }

    /** Cuts off what is of no use, and goes on from there. */
    private void startWriting() {
        reading = false;
        try {
            file.truncate(good);
            file.position(good);
        } catch (IOException e) {
            throw failed("", e);
        }
        out = new BufferedOutputStream(Channels.newOutputStream(file), 1 << 18);
    }

    /** Adds the outcome of an entry that was not known; called in the order of the input. */
    void add(byte[] frame) {
        try {
            out.write(frame);
            written++;
            if (written % FLUSH_EVERY == 0) {
                out.flush();
            }
        } catch (IOException e) {
            throw failed("", e);
        }
    }

    @Override
    public void close() {
        try {
            out.flush();
            file.close();
        } catch (IOException e) {
            throw failed("", e);
        }
    }

    private static UncheckedIOException failed(String path, Exception failure) {
        String which = path.isEmpty() ? "the journal" : "the journal " + path;
        return new UncheckedIOException(
                which + " cannot be used: " + failure.getMessage() + ".", new IOException(failure));
    }

    /** Reads in large steps; the journal itself counts what it has used. */
    private static final class Placed extends BufferedInputStream {
        Placed(InputStream in) {
            super(in, 1 << 18);
        }
    }

    /** A frame's bytes. */
    static byte[] bytes(byte[] digest, byte[] packed) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(packed.length + 64);
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(packed.length);
            out.write(digest);
            out.writeLong(Frame.checksum(packed));
            out.write(packed);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
