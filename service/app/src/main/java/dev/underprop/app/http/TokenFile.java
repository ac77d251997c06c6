package dev.underprop.app.http;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Reads files of tokens: a line each, blank lines and those that begin with a number sign aside. */
final class TokenFile {
    private static final Logger LOG = LoggerFactory.getLogger(TokenFile.class);

    /** Far above any office, far below what would make a request slow. */
    private static final int MOST = 1000;

    private static final Set<PosixFilePermission> WRITING =
            Set.of(PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);
    private static final Set<PosixFilePermission> READING =
            Set.of(PosixFilePermission.GROUP_READ, PosixFilePermission.OTHERS_READ);

    private TokenFile() {}

    static List<TokenLine> read(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        List<TokenLine> tokens = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (!line.isEmpty() && !line.startsWith("#")) {
                tokens.add(line(line, file, i + 1));
            }
        }
        if (tokens.size() > MOST) {
            throw new IllegalArgumentException(file + " has more than " + MOST + " tokens");
        }
        return List.copyOf(tokens);
    }

    private static TokenLine line(String line, Path file, int number) {
        try {
            return TokenLine.read(line);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(file + ", line " + number + ": " + e.getMessage(), e);
        }
    }

    /** Whoever can write the file can let himself in. */
    static void refuseIfOthersWrite(Path file) throws IOException {
        if (!Collections.disjoint(permissions(file), WRITING)) {
            throw new IOException(file + " can be written by others than its owner; chmod 600 it");
        }
    }

    /** The hashes let nobody in; names may still be nobody's business. */
    static void warnIfOthersRead(Path file) throws IOException {
        if (!Collections.disjoint(permissions(file), READING)) {
            LOG.warn("The file of tokens can be read by others than its owner; chmod 600 would keep its names private");
        }
    }

    /** None where the file system has no such permissions. */
    private static Set<PosixFilePermission> permissions(Path file) throws IOException {
        return file.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? Files.getPosixFilePermissions(file)
                : Set.of();
    }
}
