package dev.underprop.app.http;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/** The gzip coding of bodies, both ways (RFC 9110, sections 8.4.1.3 and 12.5.3). */
final class Gzip {
    static final String NAME = "gzip";

    /** Below this (bytes) an answer fits into a packet as it is. */
    private static final int WORTHWHILE = 1400;

    private Gzip() {}

    /** Whether the answer should go out packed. */
    static boolean wanted(Context context, int length) {
        return length >= WORTHWHILE && accepted(Collections.list(context.req().getHeaders("Accept-Encoding")));
    }

    /** What is said of gzip by name goes before what is said of everything; nothing said means no. */
    private static boolean accepted(List<String> headers) {
        List<String> codings = new ArrayList<>();
        headers.forEach(header -> codings.addAll(List.of(header.split(","))));
        boolean any = false;
        for (String coding : codings) {
            String[] parts = coding.split(";", 2);
            String name = parts[0].strip().toLowerCase(Locale.ROOT);
            boolean refused = parts.length > 1 && parts[1].strip().matches("(?i)q\\s*=\\s*0(\\.0*)?");
            if (name.equals(NAME) || name.equals("x-gzip")) {
                return !refused;
            }
            any |= name.equals("*") && !refused;
        }
        return any;
    }

    static byte[] packed(byte[] bytes) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length / 4);
        try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    static InputStream unpacked(InputStream in) throws IOException {
        return new GZIPInputStream(in);
    }
}
