package dev.underprop.app.http;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;

/** Files of tokens that only their owner can read. */
final class TokenFiles {
    private TokenFiles() {}

    /** A file with somebody's token. */
    static Path file(String token) {
        try {
            Path file = Files.createTempFile("tokens", ".txt");
            file.toFile().deleteOnExit();
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
            write(file, "# who may ask", "", TokenLine.of("office", token).text());
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void write(Path file, String... lines) {
        try {
            Files.write(file, List.of(lines));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Tokens of(String token) {
        try {
            return new Tokens(file(token));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
