package dev.underprop.app.report;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Where a report goes: the standard output, or a file that is written beside its place and moved there once complete. */
final class Sink implements AutoCloseable {
    /** What stands for the standard output. */
    static final String STANDARD_OUTPUT = "-";

    private static final String NOT_WRITTEN = "the report was not written: ";
    private static final int BUFFER = 1 << 16;

    private final OutputStream out;
    private final Path part;
    private final Path place;

    private Sink(OutputStream out, Path part, Path place) {
        this.out = new BufferedOutputStream(out, BUFFER);
        this.part = part;
        this.place = place;
    }

    /**
     * A sink for a file or for the standard output.
     *
     * @throws UncheckedIOException when nothing can be written there
     */
    static Sink to(String file) {
        if (file.equals(STANDARD_OUTPUT)) {
            return new Sink(new FileOutputStream(FileDescriptor.out), Path.of(""), Path.of(""));
        }
        Path place = Path.of(file);
        if (Files.isDirectory(place)) {
            throw failed(new IOException(file + " is a folder"));
        }
        if (Files.exists(place) && !Files.isRegularFile(place)) {
            return toDevice(place);
        }
        Path part = place.resolveSibling(
                place.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            return new Sink(
                    Files.newOutputStream(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), part, place);
        } catch (IOException e) {
            throw failed(e);
        }
    }

    /** A pipe or a device is written to as it is: to put a file in its place would take it away from everybody else. */
    private static Sink toDevice(Path device) {
        try {
            return new Sink(Files.newOutputStream(device, StandardOpenOption.WRITE), Path.of(""), Path.of(""));
        } catch (IOException e) {
            throw failed(e);
        }
    }

    /** The error output. */
    static Sink error() {
        return new Sink(new FileOutputStream(FileDescriptor.err), Path.of(""), Path.of(""));
    }

    void write(byte[] bytes) {
        write(bytes, bytes.length);
    }

    void write(byte[] bytes, int length) {
        try {
            out.write(bytes, 0, length);
        } catch (IOException e) {
            throw failed(e);
        }
    }

    void write(String text) {
        write(text.getBytes(StandardCharsets.UTF_8));
    }

    /** True when what was written can be written over. */
    boolean inFile() {
        return !place.toString().isEmpty();
    }

    /** Writes over what was written, so many bytes from the beginning. */
    void overwrite(long at, String text) {
        flush();
        try (FileChannel file = FileChannel.open(part, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                file.write(bytes, at + bytes.position());
            }
        } catch (IOException e) {
            throw failed(e);
        }
    }

    /** Passes on what was written, so that a reader at the other end sees it. */
    void flush() {
        try {
            out.flush();
        } catch (IOException e) {
            throw failed(e);
        }
    }

    /** Puts the file in its place. */
    void complete() {
        flush();
        if (!inFile()) {
            return;
        }
        try {
            out.close();
            Files.move(part, place, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw failed(e);
        }
    }

    /** Takes away what is not complete. */
    @Override
    public void close() {
        if (!inFile()) {
            return;
        }
        try {
            abandon();
            Files.deleteIfExists(part);
        } catch (IOException e) {
            throw failed(e);
        }
    }

    private void abandon() {
        try {
            out.close();
        } catch (IOException e) {
            // On a full disk the last bytes cannot be written either; they are not wanted any more.
        }
    }

    private static UncheckedIOException failed(IOException failure) {
        String what = failure.getClass().getSimpleName().replace("Exception", "");
        return new UncheckedIOException(
                NOT_WRITTEN + failure.getMessage() + (what.equals("IO") ? "" : " (" + what + ")") + ".", failure);
    }
}
