package dev.underprop.app.http;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line of a file of tokens: whose the token is, and its SHA-256. A token has 256 bits of chance, so that nobody finds it by trying,
 * and a slow hash, which makes up for secrets that people think of, would protect nothing more.
 */
public final class TokenLine {
    private static final String PREFIX = "underprop_";
    private static final int CHANCE = 32;
    private static final Pattern LINE = Pattern.compile("([A-Za-z0-9._-]{1,64})[ \t]+sha256:([0-9a-f]{64})");
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9._-]{1,64}");

    private final String name;
    private final byte[] digest;

    private TokenLine(String name, byte[] digest) {
        this.name = name;
        this.digest = digest;
    }

    /** A new token, to be told once. */
    public static String newToken() {
        byte[] chance = new byte[CHANCE];
        new SecureRandom().nextBytes(chance);
        return PREFIX + Base64.getUrlEncoder().withoutPadding().encodeToString(chance);
    }

    /** The line of somebody's token. */
    public static TokenLine of(String name, String token) {
        if (!isName(name)) {
            throw new IllegalArgumentException("not a name");
        }
        return new TokenLine(name, digest(token.getBytes(StandardCharsets.UTF_8)));
    }

    /** Whether a token may be called so: 1 to 64 letters, digits, points, underscores and hyphens. */
    public static boolean isName(String name) {
        return NAME.matcher(name).matches();
    }

    /**
     * Reads a line.
     *
     * @throws IllegalArgumentException when it is none; the message does not hold it
     */
    static TokenLine read(String line) {
        Matcher matcher = LINE.matcher(line.strip());
        if (!matcher.matches()) {
            throw new IllegalArgumentException("not a name and sha256: with 64 hexadecimal digits");
        }
        return new TokenLine(matcher.group(1), HexFormat.of().parseHex(matcher.group(2)));
    }

    String name() {
        return name;
    }

    byte[] digest() {
        return digest.clone();
    }

    /** As it stands in the file. */
    public String text() {
        return name + " sha256:" + HexFormat.of().formatHex(digest);
    }

    static byte[] digest(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
