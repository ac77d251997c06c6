package dev.underprop.app.report;

import dev.underprop.wire.door.Documents;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** A JSON array of records, written beside its place and moved there once complete: never half a report. */
public final class JsonReport implements AutoCloseable {
    private static final String NOT_WRITTEN = "the report was not written: ";

    private final OutputStream out;
    private final Path part;
    private final Path place;
    private boolean first = true;

    private JsonReport(OutputStream out, Path part, Path place) {
        this.out = new BufferedOutputStream(out);
        this.part = part;
        this.place = place;
    }

    /**
     * A report to a file, to the standard output ({@code -}), or to nowhere (the empty text).
     *
     * @throws UncheckedIOException when nothing can be written there
     */
    public static JsonReport to(String file) {
        if (file.isEmpty()) {
            return new JsonReport(OutputStream.nullOutputStream(), Path.of(""), Path.of(""));
        }
        if (file.equals("-")) {
            return new JsonReport(System.out, Path.of(""), Path.of(""));
        }
        Path place = Path.of(file);
        if (Files.isDirectory(place)) {
            throw failed(new IOException(file + " is a folder"));
        }
        Path part = place.resolveSibling(
                place.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            return new JsonReport(
                    Files.newOutputStream(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), part, place);
        } catch (IOException e) {
            throw failed(e);
        }
    }

    /** Adds one record, without the end of line that a document has. */
    public void add(Outcome outcome) {
        write(first ? "[\n" : ",\n");
        first = false;
        try {
            byte[] record = Documents.json(outcome.toRecord(), true);
            out.write(record, 0, record.length - 1);
        } catch (IOException e) {
            throw failed(e);
        }
    }

    /** Ends the array and puts the report in its place. */
    public void complete() {
        write(first ? "[]\n" : "\n]\n");
        try {
            out.flush();
            if (System.out.checkError()) {
                throw new IOException("the standard output is closed");
            }
            if (!place.toString().isEmpty()) {
                out.close();
                Files.move(part, place, StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            throw failed(e);
        }
    }

    /** Takes away what is not complete. */
    @Override
    public void close() {
        if (place.toString().isEmpty()) {
            return;
        }
        try {
            out.close();
            Files.deleteIfExists(part);
        } catch (IOException e) {
            throw failed(e);
        }
    }

    private void write(String text) {
        try {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw failed(e);
        }
    }

    private static UncheckedIOException failed(IOException failure) {
        String what = failure.getClass().getSimpleName().replace("Exception", "");
        return new UncheckedIOException(
                NOT_WRITTEN + failure.getMessage() + (what.equals("IO") ? "" : " (" + what + ")") + ".", failure);
    }
}
