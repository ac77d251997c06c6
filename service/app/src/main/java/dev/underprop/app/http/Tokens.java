package dev.underprop.app.http;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The tokens of those who may ask, as a file that may change at any time. Only what the file says now counts: a token whose line
 * is gone is refused at once, and while the file cannot be read every token is.
 */
final class Tokens {
    private static final Logger LOG = LoggerFactory.getLogger(Tokens.class);

    private final Path file;
    private volatile Reading reading;

    /** What the file said, and by what it can be told that it has changed. */
    private record Reading(Object mark, List<TokenLine> lines) {}

    /**
     * Reads the file.
     *
     * @throws IOException when it cannot be read, or anybody but its owner may write it
     * @throws IllegalArgumentException when a line is no token's, with its number, or there is no token at all
     */
    Tokens(Path file) throws IOException {
        this.file = file;
        TokenFile.refuseIfOthersWrite(file);
        TokenFile.warnIfOthersRead(file);
        Object mark = mark();
        List<TokenLine> lines = TokenFile.read(file);
        if (lines.isEmpty()) {
            throw new IllegalArgumentException(file + " has no token");
        }
        this.reading = new Reading(mark, lines);
    }

    /** The name of the one whose token it is; nothing when it is nobody's. */
    Optional<String> owner(String token) {
        byte[] digest = TokenLine.digest(token.getBytes(StandardCharsets.UTF_8));
        Optional<String> owner = Optional.empty();
        // All lines are looked at, each in constant time, so that the time tells nothing.
        for (TokenLine line : current()) {
            if (MessageDigest.isEqual(line.digest(), digest)) {
                owner = Optional.of(line.name());
            }
        }
        return owner;
    }

    private List<TokenLine> current() {
        Reading last = reading;
        Object mark = mark();
        if (mark.equals(last.mark())) {
            return last.lines();
        }
        return reread();
    }

    private synchronized List<TokenLine> reread() {
        // The mark is taken before reading: what changes meanwhile is read again.
        Object mark = mark();
        if (mark.equals(reading.mark())) {
            return reading.lines();
        }
        List<TokenLine> lines = List.of();
        try {
            TokenFile.refuseIfOthersWrite(file);
            lines = TokenFile.read(file);
            LOG.info("The file of tokens was read again, lines with a token: {}", lines.size());
        } catch (IOException | IllegalArgumentException e) {
            LOG.error("The file of tokens cannot be used, so every token is refused: {}", e.getMessage());
        }
        reading = new Reading(mark, lines);
        return lines;
    }

    /** Time, size and identity of the file; a file that is replaced is another one. */
    private Object mark() {
        try {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            return List.of(now.lastModifiedTime(), now.size(), String.valueOf(now.fileKey()));
        } catch (IOException e) {
            return "missing";
        }
    }
}
