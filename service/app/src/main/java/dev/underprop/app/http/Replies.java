package dev.underprop.app.http;

import dev.underprop.api.model.Problem;
import dev.underprop.wire.door.Documents;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Writes answers. */
final class Replies {
    static final String JSON = "application/json";
    static final String LINES = "application/x-ndjson";
    static final String PLAIN = "text/plain";
    static final String YAML = "application/yaml";
    static final String PROBLEM = "application/problem+json";
    static final String POLICY = "Content-Security-Policy";

    /** What every answer carries: nothing here is to be guessed at, framed or kept. */
    static final Map<String, String> SAFETY = Map.of(
            "X-Content-Type-Options",
            "nosniff",
            "Cache-Control",
            "no-store",
            POLICY,
            "default-src 'none'; frame-ancestors 'none'",
            "Referrer-Policy",
            "no-referrer");

    private Replies() {}

    static void json(Context context, Object model) {
        bytes(context, JSON, Documents.json(model, false));
    }

    static void text(Context context, String mediaType, String text) {
        bytes(context, withCharset(mediaType), text.getBytes(StandardCharsets.UTF_8));
    }

    /** Texts name their charset; JSON and YAML have none to name. */
    static String withCharset(String mediaType) {
        return mediaType.startsWith("text/") ? mediaType + "; charset=utf-8" : mediaType;
    }

    static void problem(Context context, Problem problem, Map<String, String> headers) {
        headers.forEach(context::header);
        Unread.settle(context);
        context.status(problem.getStatus());
        bytes(context, PROBLEM, Documents.json(problem, false));
    }

    static void bytes(Context context, String contentType, byte[] bytes) {
        context.contentType(contentType);
        context.res().addHeader("Vary", "Accept-Encoding");
        byte[] sent = bytes;
        if (Gzip.wanted(context, bytes.length)) {
            context.header("Content-Encoding", Gzip.NAME);
            sent = Gzip.packed(bytes);
        }
        context.res().setContentLength(sent.length);
        context.result(sent);
    }
}
