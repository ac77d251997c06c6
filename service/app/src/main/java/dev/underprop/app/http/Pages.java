package dev.underprop.app.http;

import dev.underprop.api.model.EngineVersion;
import dev.underprop.api.model.Health;
import dev.underprop.api.model.HealthStatus;
import dev.underprop.app.report.ProblemKind;
import dev.underprop.wire.Version;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.pages.CheckPages;
import dev.underprop.wire.pages.ProblemPages;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The operations that need no plan. */
final class Pages {
    private static final String FRONT = """
            Underprop checks the temporary support of a house floor: joists on a shore beam, the beam on
            adjustable posts, the posts on pads, the pads on the ground. Send a job plan, get forces,
            movements, a verdict for every check, and first of all what was not checked.

            A calculation aid. The local building code and a licensed engineer decide.
            Nobody under or above the bay while a screw is turned or a bearing is taken out.

            Contract: /openapi.yaml, in a browser /docs
            Checks:   /v1/checks
            Look up:  /v1/catalogue
            Ask:      POST /v1/plan-checks, POST /v1/layout-analyses, POST /v1/pad-sizings
            Health:   /health/live, /health/ready, /metrics
            """;

    /** The text format of Prometheus, by its version. */
    private static final String METRICS = "text/plain; version=0.0.4; charset=utf-8";

    private final Readiness readiness;
    private final Kept front = new Kept(Replies.PLAIN, FRONT.getBytes(StandardCharsets.UTF_8));
    private final Kept contract = new Kept(Replies.YAML, resource("/openapi/openapi.yaml"));
    private final WebPages web;
    private final Meters meters;

    Pages(Readiness readiness, WebPages web, Meters meters) {
        this.meters = meters;
        this.readiness = readiness;
        this.web = web;
    }

    /** A page for browsers, which like it best; a text for all others. */
    void front(Context context) {
        context.header("Vary", "Accept");
        if (Negotiation.prefers(context, WebPages.HTML, Replies.PLAIN)) {
            web.front(context);
        } else {
            Negotiation.accept(context, Replies.PLAIN);
            front.reply(context);
        }
    }

    void contract(Context context) {
        Negotiation.accept(context, Replies.YAML);
        contract.reply(context);
    }

    void checks(Context context) {
        Negotiation.accept(context, Replies.JSON);
        Query.none(context);
        Replies.json(context, CheckPages.list());
    }

    void check(Context context) {
        Negotiation.accept(context, Replies.JSON);
        Query.none(context);
        String id = context.pathParam("id");
        Replies.json(
                context,
                CheckPages.page(id)
                        .orElseThrow(() -> notFound("There is no check with the id " + Fault.shown(id) + ".")));
    }

    void problem(Context context) {
        Negotiation.accept(context, Replies.PLAIN);
        String name = context.pathParam("name");
        Replies.text(
                context,
                Replies.PLAIN,
                ProblemPages.page(name)
                        .orElseThrow(() -> notFound("There is no problem with the name " + Fault.shown(name) + ".")));
    }

    void metrics(Context context) {
        Negotiation.accept(context, Replies.PLAIN);
        Query.none(context);
        Replies.bytes(context, METRICS, meters.text().getBytes(StandardCharsets.UTF_8));
    }

    void live(Context context) {
        Negotiation.accept(context, Replies.JSON);
        Replies.json(context, health());
    }

    void ready(Context context) {
        Negotiation.accept(context, Replies.JSON);
        readiness.announce();
        Replies.json(context, health());
    }

    private static Health health() {
        String name = Version.text().substring(0, Version.text().indexOf(' '));
        return new Health()
                .status(HealthStatus.UP)
                .engine(new EngineVersion().name(name).version(Version.number()));
    }

    private static Refused notFound(String detail) {
        return Refused.because(ProblemKind.NOT_FOUND, detail);
    }

    private static byte[] resource(String name) {
        try (InputStream in = Pages.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the class path");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }
}
