package dev.underprop.app.http;

import dev.underprop.app.report.ProblemKind;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;

/** A fixed number of threads that analyse plans, with a short queue before them: more than that is turned away at once. */
final class Workbench {
    private static final Map<String, String> LATER = Map.of("Retry-After", "2");

    /** How long to wait for a place before looking again. */
    private static final int PAUSE_MILLIS = 20;

    private final ThreadPoolExecutor threads;
    private final Duration patience;

    /**
     * A workbench.
     *
     * @param places plans analysed at the same time
     * @param waiting plans that may wait for a place
     * @param patience longest time from arrival to answer
     */
    Workbench(int places, int waiting, Duration patience) {
        AtomicInteger number = new AtomicInteger();
        this.threads =
                new ThreadPoolExecutor(places, places, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(waiting), task -> {
                    Thread thread = new Thread(task, "analysis-" + number.incrementAndGet());
                    thread.setDaemon(true);
                    return thread;
                });
        this.patience = patience;
    }

    /** The result of a task, or a refusal when there is no place for it or it takes too long. */
    <T> T run(Callable<T> task) {
        return result(submit(task));
    }

    private <T> T result(Future<T> future) {
        try {
            return future.get(patience.toNanos(), TimeUnit.NANOSECONDS);
        } catch (TimeoutException e) {
            future.cancel(true);
            throw later("The analysis took longer than " + patience.toSeconds() + " seconds.");
        } catch (InterruptedException e) {
            future.cancel(true);
            Thread.currentThread().interrupt();
            throw later("The service is stopping.");
        } catch (ExecutionException e) {
            throw unwrapped(e);
        }
    }

    /** A task that was begun. */
    final class Pending<T> {
        private final Future<T> future;

        private Pending(Future<T> future) {
            this.future = future;
        }

        /** True when the result is there. */
        boolean done() {
            return future.isDone();
        }

        /** The result, or a refusal when it takes too long from now on. */
        T result() {
            return Workbench.this.result(future);
        }

        /** Nobody wants the result any more. */
        void giveUp() {
            future.cancel(true);
        }
    }

    /** Begins a task of many as soon as there is a place; those that are asked one by one are not held up by it. */
    <T> Pending<T> begin(Callable<T> task) {
        while (true) {
            try {
                return new Pending<>(threads.submit(task));
            } catch (RejectedExecutionException e) {
                pause();
            }
        }
    }

    private void pause() {
        if (threads.isShutdown()) {
            throw later("The service is stopping.");
        }
        try {
            Thread.sleep(PAUSE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw later("The service is stopping.");
        }
    }

    /** Plans that wait for a place. */
    int waiting() {
        return threads.getQueue().size();
    }

    /** Takes nothing new; what has begun goes on. */
    void close() {
        threads.shutdown();
    }

    private <T> Future<T> submit(Callable<T> task) {
        try {
            return threads.submit(task);
        } catch (RejectedExecutionException e) {
            throw later("Too many plans are being analysed; try again in 2 seconds.");
        }
    }

    private static RuntimeException unwrapped(ExecutionException failure) {
        return failure.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(failure);
    }

    private static Refused later(String detail) {
        return Refused.because(ProblemKind.UNAVAILABLE, detail, LATER);
    }
}
