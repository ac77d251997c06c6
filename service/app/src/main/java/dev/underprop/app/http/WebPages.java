package dev.underprop.app.http;

import dev.underprop.app.report.ProblemKind;
import dev.underprop.wire.fault.Fault;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The two pages for people and the files they load. Nothing else of the class path can be asked for. */
final class WebPages {
    static final String HTML = "text/html";
    private static final String SCRIPT = "text/javascript";
    private static final String STYLE = "text/css";

    /** Scripts, styles and requests of this service alone. */
    private static final String PAGE_POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; "
            + "img-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    /** The page of the contract sets styles of its own on elements that it makes. */
    private static final String DOCS_POLICY =
            PAGE_POLICY.replace("style-src 'self'", "style-src 'self' 'unsafe-inline'");

    private static final List<String> SCRIPTS =
            List.of("answer.js", "docs.js", "dom.js", "drawing.js", "front.js", "swagger-ui-bundle.js");
    private static final List<String> STYLES = List.of("docs.css", "page.css", "swagger-ui.css");
    private static final List<String> DEMOS = List.of(
            "adequate.yaml",
            "complete.yaml",
            "old-floor.yaml",
            "soft-ground.yaml",
            "tipping-porch.yaml",
            "two-spans.yaml");

    private final Map<String, Kept> files = new TreeMap<>();
    private final Kept front = page("front.html");
    private final Kept docs = page("docs.html");

    WebPages() {
        SCRIPTS.forEach(name -> files.put(name, new Kept(SCRIPT, resource("/pages/" + name))));
        STYLES.forEach(name -> files.put(name, new Kept(STYLE, resource("/pages/" + name))));
        DEMOS.forEach(name -> files.put(name, new Kept(Replies.YAML, resource("/demo/" + name))));
        files.put("icon.svg", new Kept("image/svg+xml", resource("/pages/icon.svg")));
    }

    private static Kept page(String name) {
        return new Kept(HTML, resource("/pages/" + name));
    }

    /** The page on which a plan can be checked. */
    void front(Context context) {
        context.header(Replies.POLICY, PAGE_POLICY);
        front.reply(context);
    }

    /** The page of the contract. */
    void docs(Context context) {
        Negotiation.accept(context, HTML);
        context.header(Replies.POLICY, DOCS_POLICY);
        docs.reply(context);
    }

    void file(Context context) {
        String name = context.pathParam("file");
        Kept file = files.get(name);
        if (file == null) {
            throw Refused.because(ProblemKind.NOT_FOUND, "The pages have no file " + Fault.shown(name) + ".");
        }
        Negotiation.accept(context, file.type());
        file.reply(context);
    }

    private static byte[] resource(String name) {
        try (InputStream in = WebPages.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the class path");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }
}
