package dev.underprop.app.http;

import dev.underprop.app.report.ProblemKind;
import java.time.Duration;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A fixed number of threads that analyse plans, with a short queue before them: more than that is turned away at once. */
final class Workbench {
    private static final Logger LOG = LoggerFactory.getLogger(Workbench.class);
    private static final Map<String, String> LATER = Map.of("Retry-After", "2");

    /** How long to wait for a place before looking again. */
    private static final int PAUSE_MILLIS = 20;

    private final ThreadPoolExecutor threads;
    private final Duration patience;
    private final Tally tally;
    private final Set<Timing> inWork = ConcurrentHashMap.newKeySet();

    /** What becomes of tasks, to be counted. */
    interface Tally {
        Tally NONE = reason -> {};

        /** A task was turned away or given up. */
        void refused(Reason reason);
    }

    /** Why a task has no result. */
    enum Reason {
        FULL,
        WAITED_TOO_LONG,
        TOO_SLOW,
        TOO_LARGE,
        STOPPING
    }

    /**
     * A workbench.
     *
     * @param places plans analysed at the same time
     * @param waiting plans that may wait for a place
     * @param patience longest time from arrival to answer
     */
    Workbench(int places, int waiting, Duration patience) {
        this(places, waiting, patience, Tally.NONE);
    }

    /** The same, counted. */
    Workbench(int places, int waiting, Duration patience, Tally tally) {
        this.tally = tally;
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
        return run(new Timing(), task);
    }

    /**
     * The same.
     *
     * @param timing told by the task, and told when the result is not wanted any more
     */
    <T> T run(Timing timing, Callable<T> task) {
        return result(submit(timing, task), timing);
    }

    private <T> T result(Future<T> future, Timing timing) {
        try {
            return future.get(patience.toNanos(), TimeUnit.NANOSECONDS);
        } catch (TimeoutException e) {
            giveUp(future, timing);
            throw timing.begun() ? tooSlow() : waitedTooLong();
        } catch (InterruptedException e) {
            giveUp(future, timing);
            Thread.currentThread().interrupt();
            throw stopping();
        } catch (ExecutionException e) {
            if (timing.isOver()) {
                throw stopping();
            }
            throw unwrapped(e);
        }
    }

    /** Whether it has begun or not, the place is wanted by others. */
    private void giveUp(Future<?> future, Timing timing) {
        timing.giveUp();
        future.cancel(true);
        if (future instanceof Runnable queued) {
            threads.remove(queued);
        }
    }

    /** A task that was begun. */
    final class Pending<T> {
        private final Future<T> future;
        private final Timing timing;

        private Pending(Future<T> future, Timing timing) {
            this.future = future;
            this.timing = timing;
        }

        /** True when the result is there. */
        boolean done() {
            return future.isDone();
        }

        /** The result, or a refusal when it takes too long from now on. */
        T result() {
            return Workbench.this.result(future, timing);
        }

        /** Nobody wants the result any more. */
        void giveUp() {
            Workbench.this.giveUp(future, timing);
        }
    }

    /**
     * Begins a task of many as soon as there is a place; those that are asked one by one are not held up by it.
     *
     * @param timing told by the task, and told when the result is not wanted any more
     */
    <T> Pending<T> begin(Timing timing, Callable<T> task) {
        while (true) {
            try {
                return new Pending<>(threads.submit(followed(timing, task)), timing);
            } catch (RejectedExecutionException e) {
                pause();
            }
        }
    }

    private void pause() {
        if (threads.isShutdown()) {
            throw stopping();
        }
        try {
            Thread.sleep(PAUSE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw stopping();
        }
    }

    /** Plans that wait for a place. */
    int waiting() {
        return threads.getQueue().size();
    }

    /** Plans that have a place. */
    int atWork() {
        return threads.getActiveCount();
    }

    /** Takes nothing new, and gives up what has begun. */
    void close() {
        threads.shutdown();
        inWork.forEach(Timing::giveUp);
    }

    private <T> Future<T> submit(Timing timing, Callable<T> task) {
        try {
            return threads.submit(followed(timing, task));
        } catch (RejectedExecutionException e) {
            if (threads.isShutdown()) {
                throw stopping();
            }
            tally.refused(Reason.FULL);
            throw later("Too many plans are being analysed; try again in 2 seconds.");
        }
    }

    private <T> Callable<T> followed(Timing timing, Callable<T> task) {
        return () -> {
            inWork.add(timing);
            try {
                return task.call();
            } catch (OutOfMemoryError e) {
                // What the plan held is free again; nothing is shared between plans that it could have left half done.
                throw tooLarge();
            } finally {
                timing.ends();
                inWork.remove(timing);
            }
        };
    }

    /** The plan's own doing: trying again would take as long. */
    private Refused tooSlow() {
        tally.refused(Reason.TOO_SLOW);
        return Refused.because(
                ProblemKind.TOO_COSTLY,
                "The answer would take longer than this service gives to one, which is " + Told.seconds(patience)
                        + ".");
    }

    private Refused tooLarge() {
        LOG.warn("A plan was given up, since it wants more memory than there is");
        tally.refused(Reason.TOO_LARGE);
        return Refused.because(
                ProblemKind.TOO_COSTLY, "The answer would take more memory than this service has for it.");
    }

    private Refused waitedTooLong() {
        tally.refused(Reason.WAITED_TOO_LONG);
        return later("The plan has waited for " + Told.seconds(patience) + " behind others; try again later.");
    }

    private Refused stopping() {
        tally.refused(Reason.STOPPING);
        return later("The service is stopping.");
    }

    private static RuntimeException unwrapped(ExecutionException failure) {
        return failure.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(failure);
    }

    private static Refused later(String detail) {
        return Refused.because(ProblemKind.UNAVAILABLE, detail, LATER);
    }
}
