package dev.underprop.app.batch;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Work done by several threads whose results come out in the order of the input. Only so much is read ahead of the oldest result
 * that is not out yet: what is slow at one end holds back the other, and memory does not depend on the length of the input.
 */
final class OrderedWork implements AutoCloseable {
    /** Enough that one slow plan does not let the other threads stand still. */
    private static final int AHEAD_OF_EACH_WORKER = 32;

    private final ExecutorService threads;
    private final int window;

    OrderedWork(int workers) {
        AtomicInteger number = new AtomicInteger();
        this.threads = Executors.newFixedThreadPool(workers, task -> {
            Thread thread = new Thread(task, "plan-" + number.incrementAndGet());
            thread.setDaemon(true);
            return thread;
        });
        this.window = workers * AHEAD_OF_EACH_WORKER;
    }

    /**
     * Takes all of the input through the work.
     *
     * @param input what there is to do, read on the calling thread
     * @param work done on any thread
     * @param inOrder takes results on the calling thread, in the order of the input
     * @param stopped when true, nothing further is begun; what has begun is finished
     */
    <I, R> void run(Iterator<I> input, Function<I, R> work, Consumer<R> inOrder, BooleanSupplier stopped) {
        Deque<Future<R>> begun = new ArrayDeque<>();
        while (!stopped.getAsBoolean() && input.hasNext()) {
            I next = input.next();
            begun.add(threads.submit(() -> work.apply(next)));
            while (begun.size() >= window || (!begun.isEmpty() && begun.peek().isDone())) {
                inOrder.accept(result(begun.remove()));
            }
        }
        while (!begun.isEmpty()) {
            inOrder.accept(result(begun.remove()));
        }
    }

    private static <R> R result(Future<R> future) {
        try {
            return future.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while plans were being judged", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e);
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
