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

    /** What every answer carries: nothing here is to be guessed at, framed or kept. */
    static final Map<String, String> SAFETY = Map.of(
            "X-Content-Type-Options", "nosniff",
            "Cache-Control", "no-store",
            "Content-Security-Policy", "default-src 'none'; frame-ancestors 'none'",
            "Referrer-Policy", "no-referrer");

    private Replies() {}

    static void json(Context context, Object model) {
        bytes(context, JSON, Documents.json(model, false));
    }

    static void text(Context context, String mediaType, String text) {
        bytes(
                context,
                mediaType + (mediaType.equals(PLAIN) ? "; charset=utf-8" : ""),
                text.getBytes(StandardCharsets.UTF_8));
    }

    static void problem(Context context, Problem problem, Map<String, String> headers) {
        headers.forEach(context::header);
        context.status(problem.getStatus());
        bytes(context, PROBLEM, Documents.json(problem, false));
    }

    static void bytes(Context context, String contentType, byte[] bytes) {
        context.contentType(contentType);
        context.res().setContentLength(bytes.length);
        context.result(bytes);
    }
}
