package dev.underprop.app.http;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Who may ask, and how.
 *
 * @param tokens file of those who may; nothing where anybody may who reaches the service
 * @param tls certificate; nothing for plain HTTP
 */
public record Entrance(Optional<Path> tokens, Optional<Tls> tls) {

    /** Anybody, by plain HTTP. */
    public static final Entrance OPEN = new Entrance(Optional.empty(), Optional.empty());

    /**
     * A certificate with its key.
     *
     * @param keystore PKCS #12 file
     * @param password of the file and of the key in it
     */
    public record Tls(Path keystore, String password) {
        /** Without the password. */
        @Override
        public String toString() {
            return "Tls[keystore=" + keystore + "]";
        }
    }
}
