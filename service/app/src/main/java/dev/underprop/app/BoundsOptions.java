package dev.underprop.app;

import dev.underprop.app.http.Bounds;
import java.time.Duration;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** How much the service takes on, and for how long. */
final class BoundsOptions {
    private static final int UNSAID = 0;
    private static final int LONGEST = 86_400;
    private static final int MANY = 100_000;
    private static final Bounds USUAL = Bounds.usual();

    @Option(
            names = "--body-bytes",
            paramLabel = "N",
            description = "Greatest size of a body, unpacked; 1048576, which is also the most, unless given.")
    private int bodyBytes = UNSAID;

    @Option(
            names = "--body-seconds",
            paramLabel = "N",
            description = "Longest time for a body to arrive; 30 unless given.")
    private int bodySeconds = UNSAID;

    @Option(
            names = "--idle-seconds",
            paramLabel = "N",
            description = "Longest time without a byte either way; 30 unless given.")
    private int idleSeconds = UNSAID;

    @Option(
            names = "--connections",
            paramLabel = "N",
            description = "Connections open at the same time, more wait; 256 unless given.")
    private int connections = UNSAID;

    @Option(
            names = "--workers",
            paramLabel = "N",
            description = "Plans worked on at the same time; one a processor, 2 at least, unless given.")
    private int workers = UNSAID;

    @Option(
            names = "--queue",
            paramLabel = "N",
            description = "Plans that may wait for a worker, more are turned away; 32 unless given.")
    private int queue = UNSAID;

    @Option(
            names = "--answer-seconds",
            paramLabel = "N",
            description = "Longest time for an answer to a plan; 60 unless given.")
    private int answerSeconds = UNSAID;

    @Option(
            names = "--drain-seconds",
            paramLabel = "N",
            description = "How long requests are still taken after readiness was taken back when stopping;"
                    + " not at all unless given.")
    private int drainSeconds = UNSAID;

    @Option(
            names = "--stop-seconds",
            paramLabel = "N",
            description = "Longest time to finish what has begun when stopping; 10 unless given.")
    private int stopSeconds = UNSAID;

    /**
     * What was chosen, and the usual for what was not.
     *
     * @throws ParameterException when a number is out of its range
     */
    Bounds bounds(CommandLine line) {
        return new Bounds(
                number(line, "--body-bytes", bodyBytes, USUAL.bodyBytes(), USUAL.bodyBytes()),
                seconds(line, "--body-seconds", bodySeconds, USUAL.bodyTime()),
                seconds(line, "--idle-seconds", idleSeconds, USUAL.idleTime()),
                number(line, "--connections", connections, USUAL.connections(), MANY),
                number(line, "--workers", workers, USUAL.places(), MANY),
                number(line, "--queue", queue, USUAL.waiting(), MANY),
                seconds(line, "--answer-seconds", answerSeconds, USUAL.analysisTime()),
                seconds(line, "--drain-seconds", drainSeconds, USUAL.drainTime()),
                seconds(line, "--stop-seconds", stopSeconds, USUAL.stopTime()));
    }

    private static Duration seconds(CommandLine line, String name, int given, Duration usual) {
        return given == UNSAID ? usual : Duration.ofSeconds(number(line, name, given, given, LONGEST));
    }

    private static int number(CommandLine line, String name, int given, int usual, int most) {
        if (given < 0 || given > most) {
            throw new ParameterException(line, name + " is a number from 1 to " + most + ".");
        }
        return given == UNSAID ? usual : given;
    }
}
