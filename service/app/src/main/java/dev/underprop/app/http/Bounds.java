package dev.underprop.app.http;

import java.time.Duration;

/**
 * Bounds on what the service takes on. How large a document may be within them is a matter of the contract and of reading.
 *
 * @param bodyBytes greatest size of a body, unpacked (bytes)
 * @param bodyTime longest time for a body to arrive, and for the head of a request
 * @param idleTime longest time without a byte either way
 * @param connections connections open at the same time
 * @param places plans analysed at the same time
 * @param waiting plans that may wait for a place
 * @param analysisTime longest time for an answer to a plan that has arrived
 * @param drainTime how long requests are still taken when stopping, after readiness was taken back
 * @param stopTime longest time to finish what has begun after that
 */
public record Bounds(
        int bodyBytes,
        Duration bodyTime,
        Duration idleTime,
        int connections,
        int places,
        int waiting,
        Duration analysisTime,
        Duration drainTime,
        Duration stopTime) {

    private static final int MEBIBYTE = 1 << 20;

    /** Threads beside those that may be held by connections: acceptors, selectors, and some to spare. */
    private static final int SPARE_THREADS = 16;

    /** The usual bounds on this machine. */
    public static Bounds usual() {
        return new Bounds(
                MEBIBYTE,
                Duration.ofSeconds(30),
                Duration.ofSeconds(30),
                256,
                usualPlaces(),
                32,
                Duration.ofSeconds(60),
                Duration.ZERO,
                Duration.ofSeconds(10));
    }

    /** One for each processor, and two at least, so that a slow plan does not stop the others. */
    public static int usualPlaces() {
        return Math.max(2, Runtime.getRuntime().availableProcessors());
    }

    Bounds withBodyTime(Duration time) {
        return new Bounds(bodyBytes, time, idleTime, connections, places, waiting, analysisTime, drainTime, stopTime);
    }

    Bounds withIdleTime(Duration time) {
        return new Bounds(bodyBytes, bodyTime, time, connections, places, waiting, analysisTime, drainTime, stopTime);
    }

    Bounds withConnections(int most) {
        return new Bounds(bodyBytes, bodyTime, idleTime, most, places, waiting, analysisTime, drainTime, stopTime);
    }

    Bounds withWorkbench(int newPlaces, int newWaiting, Duration time) {
        return new Bounds(bodyBytes, bodyTime, idleTime, connections, newPlaces, newWaiting, time, drainTime, stopTime);
    }

    Bounds withStop(Duration drain, Duration stop) {
        return new Bounds(bodyBytes, bodyTime, idleTime, connections, places, waiting, analysisTime, drain, stop);
    }

    /** Threads for requests: a connection that is slow may hold one, so that there is one for each. */
    int requestThreads() {
        return connections + SPARE_THREADS;
    }
}
