package dev.underprop.app.batch;

import dev.underprop.app.report.Paint;
import dev.underprop.app.report.Tally;
import java.io.PrintStream;
import java.util.Locale;
import java.util.function.DoubleSupplier;

/** A line on a terminal that says how far the run is; nothing at all anywhere else. */
final class Progress {
    private static final long EVERY_NANOS = 250_000_000;
    private static final int BAR = 24;
    private static final double SECONDS = 1e-9;
    private static final String CLEAR = "\r\u001b[K";

    private final PrintStream out;
    private final boolean on;
    private final DoubleSupplier share;
    private final long start = System.nanoTime();
    private long next = start + EVERY_NANOS;
    private boolean shown;

    /**
     * A line of progress.
     *
     * @param out where a person may read it
     * @param on whether a person does
     * @param share how much of the input was read, 0 to 1; negative when that cannot be told
     */
    Progress(PrintStream out, boolean on, DoubleSupplier share) {
        this.out = out;
        this.on = on;
        this.share = share;
    }

    /** Nothing is told. */
    static Progress none() {
        return new Progress(System.err, false, () -> -1);
    }

    /** On the error output of a terminal. */
    static Progress onTerminal(DoubleSupplier share) {
        return new Progress(System.err, Paint.terminal() && !"dumb".equals(System.getenv("TERM")), share);
    }

    /** Says how far the run is, a few times a second. */
    void tell(Tally tally) {
        long now = System.nanoTime();
        if (on && now >= next) {
            next = now + EVERY_NANOS;
            shown = true;
            out.print(CLEAR
                    + line(tally.plans(), tally.open(), tally.refused(), share.getAsDouble(), (now - start) * SECONDS));
            out.flush();
        }
    }

    /** Takes the line away, so that something else can be written. */
    void clear() {
        if (shown) {
            out.print(CLEAR);
            out.flush();
            shown = false;
        }
    }

    static String line(int plans, int findings, int refused, double share, double seconds) {
        StringBuilder line = new StringBuilder();
        if (share >= 0) {
            int full = (int) Math.round(BAR * Math.min(1, share));
            line.append('[')
                    .append("#".repeat(full))
                    .append(".".repeat(BAR - full))
                    .append("] ");
        }
        line.append(plans).append(plans == 1 ? " plan" : " plans");
        if (seconds > 0) {
            double rate = plans / seconds;
            line.append(String.format(Locale.ROOT, rate < 10 ? ", %.1f a second" : ", %.0f a second", rate));
        }
        if (share > 0.001 && share < 1) {
            line.append(", ").append(clock(seconds * (1 - share) / share)).append(" left");
        }
        line.append(", ").append(findings).append(" findings");
        return refused == 0
                ? line.toString()
                : line.append(", ").append(refused).append(" not judged").toString();
    }

    private static String clock(double seconds) {
        long whole = Math.round(seconds);
        return whole < 3600
                ? String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60)
                : String.format(Locale.ROOT, "%d:%02d:%02d", whole / 3600, whole / 60 % 60, whole % 60);
    }
}
