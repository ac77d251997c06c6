package dev.underprop.app.http;

import dev.underprop.app.report.ProblemKind;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lets in those who show a token, by handler and not by address, so that no way of writing an address goes past it. Bearer tokens
 * are those of RFC 6750.
 */
final class Access {
    private static final Pattern BEARER = Pattern.compile("(?i:bearer) +([A-Za-z0-9._~+/-]{1,512}=*)");
    private static final String CHALLENGE = "Bearer realm=\"underprop\"";

    private final Optional<Tokens> tokens;

    /** @param tokens of those who may; nothing where anybody may */
    Access(Optional<Tokens> tokens) {
        this.tokens = tokens;
    }

    /** The handler for those who may alone. */
    Handler guarded(Handler handler) {
        return tokens.isEmpty()
                ? handler
                : context -> {
                    Visit.of(context).who(owner(tokens.get(), context));
                    handler.handle(context);
                };
    }

    private static String owner(Tokens tokens, Context context) {
        List<String> headers = Collections.list(context.req().getHeaders("Authorization"));
        if (headers.isEmpty()) {
            throw refused("The request shows no token.", CHALLENGE);
        }
        Matcher matcher = BEARER.matcher(headers.get(0));
        if (headers.size() > 1 || !matcher.matches()) {
            throw refused("The header Authorization is not one bearer token.", CHALLENGE);
        }
        return tokens.owner(matcher.group(1))
                .orElseThrow(() -> refused(
                        "The token is not known here, or not any more.", CHALLENGE + ", error=\"invalid_token\""));
    }

    private static Refused refused(String detail, String challenge) {
        // Nothing is read from strangers.
        return Refused.because(
                ProblemKind.UNAUTHORIZED, detail, Map.of("WWW-Authenticate", challenge, "Connection", "close"));
    }
}
