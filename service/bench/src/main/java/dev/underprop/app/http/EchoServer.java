package dev.underprop.app.http;

import dev.underprop.api.model.JobPlan;
import dev.underprop.wire.meaning.ModelReader;
import dev.underprop.wire.shape.ShapeCheck;
import dev.underprop.wire.tree.Format;
import dev.underprop.wire.tree.Limits;
import dev.underprop.wire.tree.TreeReader;
import dev.underprop.wire.tree.TreeReading;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.concurrent.CountDownLatch;

/**
 * The service with one address more, {@code /bench/echo}: a plan is parsed, held to the contract's shape and limits, and written
 * back. It is the yardstick for all that a plan costs on top: the same server, the same body, no engine. Never shipped.
 */
public final class EchoServer {
    private static final TreeReader TREES = new TreeReader(Limits.USUAL);
    private static final ModelReader MODELS = new ModelReader();
    private static final ShapeCheck SHAPES = new ShapeCheck(MODELS.mapper(), JobPlan.class, Limits.USUAL.faults());

    private EchoServer() {}

    /**
     * Serves until the process ends.
     *
     * @param args the port
     */
    public static void main(String[] args) throws InterruptedException {
        Settings settings = Settings.at("127.0.0.1", Integer.parseInt(args[0]));
        try (Service service = Service.start(settings, routes -> routes.post("/bench/echo", EchoServer::echo))) {
            System.out.println("listening on " + service.port());
            new CountDownLatch(1).await();
        }
    }

    private static void echo(Context context) {
        Format format = Negotiation.format(context);
        TreeReading reading = TREES.read(body(context), format);
        if (!(reading instanceof TreeReading.Tree tree)) {
            throw new IllegalArgumentException("not readable: " + reading);
        }
        if (!SHAPES.check(tree.root()).isEmpty()) {
            throw new IllegalArgumentException("not of the right shape");
        }
        JobPlan plan = MODELS.bind(tree.root());
        if (!MODELS.faults(plan).isEmpty()) {
            throw new IllegalArgumentException("beyond the limits");
        }
        Replies.json(context, plan);
    }

    private static byte[] body(Context context) {
        try {
            return context.req().getInputStream().readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
