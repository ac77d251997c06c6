package dev.underprop.wire.door;

import com.fasterxml.jackson.databind.JsonNode;
import dev.underprop.wire.tree.Canonical;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 of a plan's canonical text, lower-case hexadecimal. */
final class PlanDigest {

    private PlanDigest() {}

    static String of(JsonNode tree) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha.digest(Canonical.text(tree).getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
