package dev.underprop.app.http;

import java.time.Duration;

/**
 * How the service is run.
 *
 * @param host address to listen on
 * @param port port to listen on, 0 for any free one
 * @param bodyBytes greatest size of a body (bytes)
 * @param bodyTime longest time for a body to arrive
 * @param places plans analysed at the same time
 * @param waiting plans that may wait for a place
 * @param analysisTime longest time for an answer to a plan that has arrived
 * @param stopTime longest time to finish what has begun when stopping
 */
public record Settings(
        String host,
        int port,
        int bodyBytes,
        Duration bodyTime,
        int places,
        int waiting,
        Duration analysisTime,
        Duration stopTime) {

    private static final int MEBIBYTE = 1 << 20;

    /** The usual limits, at an address. */
    public static Settings at(String host, int port) {
        int cores = Runtime.getRuntime().availableProcessors();
        return new Settings(
                host,
                port,
                MEBIBYTE,
                Duration.ofSeconds(30),
                Math.max(2, cores),
                32,
                Duration.ofSeconds(60),
                Duration.ofSeconds(10));
    }

    /** The same with another limit on the time for a body. */
    Settings withBodyTime(Duration time) {
        return new Settings(host, port, bodyBytes, time, places, waiting, analysisTime, stopTime);
    }

    /** The same with other limits on analyses. */
    Settings withWorkbench(int newPlaces, int newWaiting, Duration time) {
        return new Settings(host, port, bodyBytes, bodyTime, newPlaces, newWaiting, time, stopTime);
    }

    /** Threads for requests: those at work, those that wait, and some to spare for pages and probes. */
    int requestThreads() {
        return places + waiting + 16;
    }
}
