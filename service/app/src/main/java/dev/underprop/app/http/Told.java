package dev.underprop.app.http;

import java.time.Duration;

/** Numbers in the sentences of problems. */
final class Told {
    private Told() {}

    /** A time in seconds, with milliseconds where there are any. */
    static String seconds(Duration time) {
        long millis = time.toMillis();
        if (millis % 1000 != 0) {
            return millis + " ms";
        }
        return millis == 1000 ? "1 second" : millis / 1000 + " seconds";
    }
}
