package dev.underprop.app.report;

import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.tree.Place;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Where a result of SARIF stands, and what it is known by from run to run. */
final class SarifPlaces {
    /** Where a file begins. */
    static final Place START = new Place(1, 1);

    private SarifPlaces() {}

    /** A place in a file, with the name of the thing that stands there. */
    static Map<String, Object> location(EntryName name, Place place, String thing) {
        Map<String, Object> region = new LinkedHashMap<>();
        region.put("startLine", name.line() > 0 ? name.line() : place.line());
        region.put("startColumn", place.column());
        Map<String, Object> physical = new LinkedHashMap<>();
        physical.put("artifactLocation", Map.of("uri", uri(name.path())));
        physical.put("region", region);
        Map<String, Object> location = new LinkedHashMap<>();
        location.put("physicalLocation", physical);
        if (!thing.isEmpty()) {
            location.put("logicalLocations", List.of(Map.of("fullyQualifiedName", thing)));
        }
        return location;
    }

    /** The path as a URI: relative as given, {@code file:} when it is absolute. */
    static String uri(String path) {
        String plain = path.startsWith("./") ? path.substring(2) : path;
        if (plain.equals("-")) {
            return "stdin";
        }
        try {
            return plain.startsWith("/")
                    ? new URI("file", "", plain, null).toASCIIString()
                    : new URI(null, null, "/" + plain, null).toASCIIString().substring(1);
        } catch (URISyntaxException e) {
            throw new IllegalStateException("a path is always the path of a URI: " + plain, e);
        }
    }

    /** SHA-256 over key, check and place: the same for the same finding, however the text around it moves. */
    static String fingerprint(String key, String check, String place) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            String all = key + '\n' + check + '\n' + place;
            return HexFormat.of().formatHex(sha.digest(all.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
