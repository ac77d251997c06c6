package dev.underprop.app.http;

import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.io.ssl.SslConnection;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * Closes connections whose request takes too long to say what it is: a byte now and then keeps a connection from being idle, and the
 * server underneath has no clock for the head of a request. Bodies have one of their own.
 */
final class Heads implements Connection.Listener {
    private static final int LOOKS_IN_PATIENCE = 8;

    private final Map<Connection, Head> heads = new ConcurrentHashMap<>();
    private final AtomicBoolean watching = new AtomicBoolean();
    private final Scheduler scheduler;
    private final long patience;

    /** The head that a connection waits for. */
    private static final class Head {
        private volatile boolean whole;
        private volatile long bytesBefore;
        private volatile long begun;
        private volatile boolean beginning;
    }

    Heads(Scheduler scheduler, Duration patience) {
        this.scheduler = scheduler;
        this.patience = patience.toNanos();
    }

    @Override
    public void onOpened(Connection connection) {
        if (!(connection instanceof SslConnection)) {
            heads.put(connection, new Head());
            watch();
        }
    }

    @Override
    public void onClosed(Connection connection) {
        heads.remove(connection);
    }

    /** The head has arrived. */
    void arrived(Connection connection) {
        Head head = heads.get(connection);
        if (head != null) {
            head.whole = true;
        }
    }

    /** The request is answered, and the next head may come. */
    void answered(Connection connection) {
        Head head = heads.get(connection);
        if (head != null) {
            head.bytesBefore = connection.getBytesIn();
            head.beginning = false;
            head.whole = false;
        }
    }

    private void watch() {
        if (!heads.isEmpty() && watching.compareAndSet(false, true)) {
            scheduler.schedule(this::look, patience / LOOKS_IN_PATIENCE, TimeUnit.NANOSECONDS);
        }
    }

    private void look() {
        long now = System.nanoTime();
        heads.forEach((connection, head) -> look(connection, head, now));
        watching.set(false);
        watch();
    }

    private void look(Connection connection, Head head, long now) {
        if (head.whole || connection.getBytesIn() == head.bytesBefore) {
            return;
        }
        if (!head.beginning) {
            head.begun = now;
            head.beginning = true;
        } else if (now - head.begun > patience) {
            connection.getEndPoint().close();
        }
    }
}
