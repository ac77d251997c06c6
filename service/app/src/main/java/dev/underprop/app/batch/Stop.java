package dev.underprop.app.batch;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Lets the run end in order when the process is told to stop (Ctrl-C, TERM): nothing further is begun, what has begun is finished and
 * written, and only then does the process end.
 */
final class Stop implements AutoCloseable {
    /** A plan takes seconds at the most; what takes longer than this is given up. */
    private static final int PATIENCE_SECONDS = 60;

    private final CountDownLatch finished = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stop, "stop");
    private volatile boolean asked;

    /** From now on, being told to stop waits for {@link #close}. */
    Stop() {
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** True once the process was told to stop. */
    boolean asked() {
        return asked;
    }

    private void stop() {
        asked = true;
        try {
            if (!finished.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                System.err.println("underprop check: plans in flight did not end within a minute and are given up.");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** The run has ended. */
    @Override
    public void close() {
        finished.countDown();
        if (!asked) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                // The process is ending just now; the hook finds the run finished.
                asked = true;
            }
        }
    }
}
