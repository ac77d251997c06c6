package dev.underprop.app.http;

import io.javalin.http.Context;
import jakarta.servlet.ServletInputStream;
import java.io.IOException;
import java.time.Duration;

/**
 * What is left of the body of a request that is refused without it. A client that is still sending would see a broken pipe instead of
 * the reason, and one that keeps its connection would next use a closed one; so a little is read first, and where there is more the
 * answer says that the connection ends (RFC 9112, 9.6).
 */
final class Unread {
    /** Bytes that are read away at most. */
    private static final int MOST = 1 << 20;

    /** How long they are waited for. */
    private static final Duration PATIENCE = Duration.ofSeconds(2);

    private static final int CHUNK = 8192;
    private static final String CONNECTION = "Connection";

    private Unread() {}

    /** Reads what is left, or says that the connection ends; to be called before the answer is written. */
    static void settle(Context context) {
        boolean ends = "close".equals(context.res().getHeader(CONNECTION));
        if (!ends && !readAway(context)) {
            context.header(CONNECTION, "close");
        }
    }

    private static boolean readAway(Context context) {
        boolean waits = context.req().getHeader("Expect") != null;
        if (waits || context.req().getContentLengthLong() > MOST) {
            return false;
        }
        long start = System.nanoTime();
        long all = 0;
        byte[] chunk = new byte[CHUNK];
        try {
            ServletInputStream in = context.req().getInputStream();
            int got = 0;
            while (got >= 0 && all <= MOST && System.nanoTime() - start < PATIENCE.toNanos()) {
                got = in.isFinished() ? -1 : in.read(chunk);
                all += Math.max(0, got);
            }
            return got < 0;
        } catch (IOException e) {
            return false;
        }
    }
}
