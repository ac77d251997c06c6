package dev.underprop.app.http;

import java.util.UUID;
import java.util.regex.Pattern;
import org.eclipse.jetty.server.Request;

/** The name under which a request can be found again: the client's own, when it sends one that can be written anywhere. */
final class RequestId {
    static final String HEADER = "X-Request-Id";

    /** Key of the request's attribute. */
    static final String ATTRIBUTE = "dev.underprop.request-id";

    private static final Pattern USABLE = Pattern.compile("[A-Za-z0-9._-]{1,64}");

    private RequestId() {}

    /** Gives a request its name and keeps it there. */
    static String name(Request request) {
        String sent = request.getHeaders().get(HEADER);
        String id = sent != null && USABLE.matcher(sent).matches()
                ? sent
                : UUID.randomUUID().toString();
        request.setAttribute(ATTRIBUTE, id);
        return id;
    }

    /** The name that a request was given. */
    static String of(Request request) {
        return request.getAttribute(ATTRIBUTE) instanceof String id ? id : name(request);
    }
}
