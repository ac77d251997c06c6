package dev.underprop.app.http;

import java.time.Duration;

/**
 * How the service is run.
 *
 * @param host address to listen on
 * @param port port to listen on, 0 for any free one
 * @param bounds on time, size and number
 * @param entrance who may ask, and how
 */
public record Settings(String host, int port, Bounds bounds, Entrance entrance) {

    /** The usual bounds, at an address, for anybody who reaches it. */
    public static Settings at(String host, int port) {
        return new Settings(host, port, Bounds.usual(), Entrance.OPEN);
    }

    /** The same with other bounds. */
    Settings with(Bounds others) {
        return new Settings(host, port, others, entrance);
    }

    /** The same with another entrance. */
    Settings with(Entrance other) {
        return new Settings(host, port, bounds, other);
    }

    /** The same with another limit on the time for a body. */
    Settings withBodyTime(Duration time) {
        return with(bounds.withBodyTime(time));
    }

    /** The same with other limits on analyses. */
    Settings withWorkbench(int places, int waiting, Duration time) {
        return with(bounds.withWorkbench(places, waiting, time));
    }
}
