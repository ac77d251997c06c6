package dev.underprop.app.http;

import dev.underprop.app.report.ProblemKind;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.tree.Format;
import io.javalin.http.Context;
import java.util.Collections;
import java.util.Comparator;
import java.util.Enumeration;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Agrees on media types: what a client wants to get, and what it sends. */
final class Negotiation {
    private static final String READ = "Plans are read as application/json or application/yaml, in UTF-8";

    private static final String LINES = "Many plans are read as application/x-ndjson, one a line, in UTF-8";

    private Negotiation() {}

    /**
     * Refuses a request that does not accept what the resource is available as.
     *
     * @param available the one media type of the resource
     */
    static void accept(Context context, String available) {
        if (weight(context, available) <= 0) {
            throw Refused.because(ProblemKind.NOT_ACCEPTABLE, "The resource is available as " + available + " only.");
        }
    }

    /** Whether a client says that it likes one media type better than another. */
    static boolean prefers(Context context, String one, String other) {
        return weight(context, one) > weight(context, other);
    }

    /** The weight of the range that names the type most closely; one when no range is given. */
    private static double weight(Context context, String available) {
        Enumeration<String> headers = context.req().getHeaders("Accept");
        StringBuilder all = new StringBuilder();
        while (headers.hasMoreElements()) {
            all.append(',').append(headers.nextElement());
        }
        if (all.chars().allMatch(c -> c == ',' || c == ' ')) {
            return 1;
        }
        return Stream.of(all.toString().split(","))
                .filter(range -> !range.isBlank())
                .flatMap(Negotiation::range)
                .filter(range -> range.covers(available))
                .max(Comparator.comparingInt(MediaType::closeness))
                .map(MediaType::weight)
                .orElse(0.0);
    }

    /** A range that cannot be read accepts nothing. */
    private static Stream<MediaType> range(String text) {
        try {
            MediaType range = MediaType.of(text);
            return range.weight() >= 0 ? Stream.of(range) : Stream.empty();
        } catch (IllegalArgumentException e) {
            return Stream.empty();
        }
    }

    /** Whether the body is packed; what no one here can unpack is refused. */
    static boolean packed(Context context) {
        // Several headers are one list (RFC 9110, section 5.3), and a list of codings is not unpacked here.
        String coding = String.join(", ", Collections.list(context.req().getHeaders("Content-Encoding")));
        if (coding.isBlank() || coding.strip().equalsIgnoreCase("identity")) {
            return false;
        }
        if (coding.strip().equalsIgnoreCase(Gzip.NAME)) {
            return true;
        }
        throw Refused.because(
                ProblemKind.UNSUPPORTED_MEDIA_TYPE,
                "Bodies are read as they are or in the coding gzip, not in " + Fault.shown(coding) + ".",
                Map.of("Accept-Encoding", Gzip.NAME));
    }

    /** The format of the body, by its Content-Type alone. */
    static Format format(Context context) {
        String type = type(context, READ);
        return switch (type) {
            case "application/json" -> Format.JSON;
            case "application/yaml" -> Format.YAML;
            default -> throw unsupported(READ + ", not as " + Fault.shown(type) + ".");
        };
    }

    /** Refuses a body that is not plans a line each. */
    static void lines(Context context) {
        if (packed(context)) {
            throw unsupported("Plans a line each are read as they are, not in a content coding; send them unpacked.");
        }
        String type = type(context, LINES);
        if (!type.equals(Replies.LINES)) {
            throw unsupported(LINES + ", not as " + Fault.shown(type) + ".");
        }
    }

    private static String type(Context context, String wanted) {
        String header = context.header("Content-Type");
        if (header == null || header.isBlank()) {
            throw unsupported(wanted + "; the request has no Content-Type that says which.");
        }
        MediaType type = read(header, wanted);
        String charset = type.parameters().getOrDefault("charset", "utf-8").toLowerCase(Locale.ROOT);
        if (!charset.equals("utf-8") && !charset.equals("utf8")) {
            throw unsupported(wanted + ", not in the charset " + Fault.shown(charset) + ".");
        }
        return type.type();
    }

    private static MediaType read(String header, String wanted) {
        try {
            return MediaType.of(header);
        } catch (IllegalArgumentException e) {
            throw unsupported(wanted + "; the Content-Type is " + e.getMessage() + ".");
        }
    }

    private static Refused unsupported(String detail) {
        return Refused.because(ProblemKind.UNSUPPORTED_MEDIA_TYPE, detail);
    }
}
