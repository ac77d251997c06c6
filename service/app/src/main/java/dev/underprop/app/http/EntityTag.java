package dev.underprop.app.http;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.Enumeration;
import java.util.HexFormat;
import java.util.List;

/**
 * A strong entity tag (RFC 9110, section 8.8.3), made from the bytes of an answer.
 *
 * @param text with its quotes
 */
record EntityTag(String text) {
    private static final String WEAK = "W/";

    static EntityTag of(byte[] bytes) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return new EntityTag('"' + HexFormat.of().formatHex(digest) + '"');
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The same for bytes that mean the same. */
    String weak() {
        return WEAK + text;
    }

    /**
     * True when the client holds the answer.
     *
     * @param headers values of If-None-Match: tags of this service, or an asterisk; whether weak does not count (RFC 9110,
     *     section 13.1.2)
     */
    boolean isHeld(Enumeration<String> headers) {
        return Collections.list(headers).stream()
                .flatMap(header -> List.of(header.split(",")).stream())
                .map(String::strip)
                .map(tag -> tag.startsWith(WEAK) ? tag.substring(WEAK.length()) : tag)
                .anyMatch(tag -> tag.equals("*") || tag.equals(text));
    }
}
