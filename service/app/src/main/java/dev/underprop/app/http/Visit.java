package dev.underprop.app.http;

import io.javalin.http.Context;
import org.eclipse.jetty.server.Request;

/** What is noted of one request while it is answered, for the log and the metrics. Holds nothing of what was sent. */
final class Visit {
    /** Key of the request's attribute. */
    static final String ATTRIBUTE = "dev.underprop.visit";

    /** What is not known. */
    static final String NONE = "-";

    private volatile String route = NONE;
    private volatile String who = NONE;
    private volatile Timing timing = new Timing();

    /** Begins the notes on a request. */
    static void begin(Request request) {
        request.setAttribute(ATTRIBUTE, new Visit());
    }

    /** The notes on a request; blank ones where it was refused before any were begun. */
    static Visit of(Request request) {
        return request.getAttribute(ATTRIBUTE) instanceof Visit visit ? visit : new Visit();
    }

    static Visit of(Context context) {
        return context.req().getAttribute(ATTRIBUTE) instanceof Visit visit ? visit : new Visit();
    }

    /** The address as the contract writes it, with names for what varies. */
    String route() {
        return route;
    }

    void route(String template) {
        route = template;
    }

    /** Whose token it was. */
    String who() {
        return who;
    }

    void who(String name) {
        who = name;
    }

    Timing timing() {
        return timing;
    }

    void timing(Timing taken) {
        timing = taken;
    }
}
