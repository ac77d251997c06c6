package dev.underprop.app.http;

import dev.underprop.wire.door.Watch;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;

/** The stages of one answer by the clock, and whether it is still wanted. The one who makes the answer tells, others read. */
final class Timing implements Watch {
    static final String HEADER = "Server-Timing";
    private static final double NANOS_A_MILLI = 1e6;

    private final Map<Stage, Long> nanos = new EnumMap<>(Stage.class);
    private Stage stage = Stage.PARSE;
    private long since;
    private boolean running;
    private volatile boolean begun;
    private volatile boolean over;

    @Override
    public void begins(Stage next) {
        begun = true;
        tell(next);
    }

    /** The answer is made. */
    synchronized void ends() {
        close();
        running = false;
    }

    private synchronized void tell(Stage next) {
        close();
        stage = next;
        since = System.nanoTime();
        running = true;
    }

    private void close() {
        if (running) {
            nanos.merge(stage, System.nanoTime() - since, Long::sum);
        }
    }

    @Override
    public boolean isOver() {
        return over;
    }

    /** Nobody wants the answer any more. */
    void giveUp() {
        over = true;
    }

    /** Whether work on the answer has begun. */
    boolean begun() {
        return begun;
    }

    /** Time of each stage that there was (ns). */
    synchronized Map<Stage, Long> stages() {
        return new EnumMap<>(nanos);
    }

    /** The value of the header: stages in their order, in milliseconds; empty where there was none. */
    String header() {
        StringJoiner header = new StringJoiner(", ");
        stages().forEach((each, time) ->
                header.add(word(each) + String.format(Locale.ROOT, ";dur=%.3f", time / NANOS_A_MILLI)));
        return header.toString();
    }

    static String word(Stage stage) {
        return stage.name().toLowerCase(Locale.ROOT);
    }
}
