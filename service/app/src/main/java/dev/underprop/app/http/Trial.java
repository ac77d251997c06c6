package dev.underprop.app.http;

import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.tree.Format;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import org.slf4j.ILoggerFactory;
import org.slf4j.LoggerFactory;

/**
 * The log, then the door, made and tried out on a thread of its own while the command line is read and the server opens its port: what
 * would fail for every plan fails here, before any is taken in. Each of the two takes about half of a start.
 */
public final class Trial implements Supplier<PlanDoor> {
    private static final String PLAN = "/demo/two-spans.yaml";

    private final CompletableFuture<ILoggerFactory> log = new CompletableFuture<>();
    private final CompletableFuture<PlanDoor> door = new CompletableFuture<>();

    private Trial() {}

    /** Begins it. */
    public static Trial begin() {
        Trial trial = new Trial();
        Thread thread = new Thread(trial::run, "trial");
        thread.setDaemon(true);
        thread.start();
        return trial;
    }

    /**
     * The door, waited for.
     *
     * @throws IllegalStateException when the trial plan was not judged
     */
    @Override
    public PlanDoor get() {
        try {
            return door.join();
        } catch (CompletionException e) {
            throw new IllegalStateException("The trial plan " + PLAN + " was not judged", e.getCause());
        }
    }

    /** Waits for the log: what another thread logs while it is set up would be told late, and with a complaint. */
    public void awaitLog() {
        log.join();
    }

    private void run() {
        log.completeAsync(LoggerFactory::getILoggerFactory, Runnable::run);
        door.completeAsync(Trial::tried, Runnable::run);
    }

    /** One small plan from reading to writing. */
    private static PlanDoor tried() {
        PlanDoor door = new PlanDoor();
        Answer<?> answer = door.check(plan(), Format.YAML, AnswerOptions.USUAL);
        if (!(answer instanceof Answer.Judged)) {
            throw new IllegalStateException(answer.toString());
        }
        return door;
    }

    private static byte[] plan() {
        try (InputStream in = Trial.class.getResourceAsStream(PLAN)) {
            if (in == null) {
                throw new IllegalStateException(PLAN + " is missing from the class path");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(PLAN, e);
        }
    }
}
