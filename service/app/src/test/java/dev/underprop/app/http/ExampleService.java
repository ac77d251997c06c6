package dev.underprop.app.http;

import dev.underprop.wire.door.Watch;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * The service with two more addresses, for the answers that no request brings about when all is well: a defect, and a
 * workbench whose place and whose seat for waiting are taken. Both answers are made by the service's own code.
 */
final class ExampleService implements AutoCloseable {
    static final String DEFECT = "/defect";
    static final String OVERLOADED = "/overloaded";
    static final String CLOSED = "/closed";
    static final String SLOW = "/slow";

    private static final int PATIENCE_SECONDS = 20;

    private final Workbench full = new Workbench(1, 1, Duration.ofHours(1));
    private final CountDownLatch end = new CountDownLatch(1);
    private final Workbench slow = new Workbench(1, 1, Duration.ofSeconds(1));
    private final Access closed = new Access(Optional.of(TokenFiles.of(TokenLine.newToken())));
    private final Service service;

    ExampleService() {
        fill();
        service = Service.start(Settings.at("127.0.0.1", 0), routes -> {
            routes.get(DEFECT, context -> {
                throw new IllegalStateException("a defect on purpose");
            });
            routes.get(OVERLOADED, this::oneTooMany);
            routes.get(CLOSED, closed.guarded(context -> context.result("open")));
            routes.get(SLOW, this::tooSlow);
        });
    }

    int port() {
        return service.port();
    }

    @Override
    public void close() {
        service.close();
        end.countDown();
        full.close();
        slow.close();
    }

    private void tooSlow(Context context) {
        Timing timing = new Timing();
        context.result(slow.run(timing, () -> {
            timing.begins(Watch.Stage.SOLVE);
            while (!timing.isOver()) {
                Thread.onSpinWait();
            }
            return "it was made in time";
        }));
    }

    private void oneTooMany(Context context) {
        context.result(full.run(() -> "there was a place"));
    }

    /** One task at work and one that waits, until the end. */
    private void fill() {
        for (int i = 0; i < 2; i++) {
            Thread thread = new Thread(() -> full.run(this::holdUntilTheEnd), "example-" + i);
            thread.setDaemon(true);
            thread.start();
        }
        long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (full.waiting() == 0) {
            if (System.nanoTime() > deadline) {
                throw new IllegalStateException("The workbench could not be filled");
            }
            Thread.onSpinWait();
        }
    }

    private boolean holdUntilTheEnd() throws InterruptedException {
        end.await();
        return true;
    }
}
