package dev.underprop.app.http;

import dev.underprop.app.batch.LineRecords;
import dev.underprop.app.batch.PlanJudge;
import dev.underprop.app.report.ProblemKind;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.lines.LineReader;
import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.record.Outcome;
import dev.underprop.wire.tree.Format;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;

/**
 * The operation that takes a plan a line and answers a record a line while it reads. Only so many plans are held as there are places
 * to judge them, so neither a long request nor a slow reader costs memory; a reader that goes away is noticed at the next record.
 */
final class PlanLines {
    private static final Map<String, String> LATER = Map.of("Retry-After", "10");

    private final Supplier<PlanDoor> door;
    private final Workbench workbench;
    private final Readiness readiness;
    private final Meters meters;
    private final int window;
    private final Semaphore streams;

    /**
     * The operation.
     *
     * @param door reads and judges
     * @param workbench judges beside the other operations
     * @param readiness whether requests are taken
     * @param meters counts what is judged
     * @param window plans that a request has in work at the same time
     */
    PlanLines(Supplier<PlanDoor> door, Workbench workbench, Readiness readiness, Meters meters, int window) {
        this.meters = meters;
        this.door = door;
        this.workbench = workbench;
        this.readiness = readiness;
        this.window = window;
        this.streams = new Semaphore(2 * window);
    }

    void check(Context context) {
        Negotiation.accept(context, Replies.LINES);
        Query.RecordOptions options = Query.recordOptions(context);
        Negotiation.lines(context);
        boolean packed = Negotiation.packed(context);
        readiness.check();
        if (!streams.tryAcquire()) {
            throw Refused.because(
                    ProblemKind.UNAVAILABLE, "Too many lists of plans are being checked; try again later.", LATER);
        }
        try {
            context.contentType(Replies.LINES);
            new Stream(context, options, packed).run();
        } catch (IOException e) {
            // The client has gone away, or sends no more: nobody is left to be told.
            return;
        } finally {
            streams.release();
        }
    }

    /** One request. */
    private final class Stream {
        private final Context context;
        private final boolean packed;
        private final PlanJudge judge;
        private final LineRecords records;
        private final Deque<Begun> begun = new ArrayDeque<>();
        private int line;

        /** A plan in work. */
        private record Begun(EntryName name, Workbench.Pending<Outcome> outcome) {}

        Stream(Context context, Query.RecordOptions options, boolean packed) {
            this.context = context;
            this.packed = packed;
            this.judge = new PlanJudge(door.get(), options.answer(), false);
            this.records = new LineRecords(options.extent());
        }

        void run() throws IOException {
            InputStream in = context.req().getInputStream();
            LineReader lines = new LineReader(packed ? Gzip.unpacked(in) : in);
            OutputStream out = context.res().getOutputStream();
            try {
                for (Optional<byte[]> text = lines.next(); text.isPresent(); text = lines.next()) {
                    line++;
                    if (!LineReader.blank(text.get())) {
                        begin(text.get(), out);
                    }
                    tellAllUnlessMoreIsThere(lines, out);
                }
                tellAll(out);
                out.write(records.last());
                out.flush();
            } finally {
                begun.forEach(plan -> plan.outcome().giveUp());
            }
        }

        private void begin(byte[] text, OutputStream out) throws IOException {
            EntryName name = new EntryName("", line);
            Timing timing = new Timing();
            while (begun.size() >= window) {
                tellOldest(out);
            }
            begun.add(new Begun(
                    name, workbench.begin(timing, () -> judge(new Entry.Text(name, Format.JSON, text), timing))));
            while (!begun.isEmpty() && begun.peek().outcome().done()) {
                tellOldest(out);
            }
        }

        private Outcome judge(Entry.Text text, Timing timing) {
            Outcome outcome = judge.judge(text, timing);
            if (outcome instanceof Outcome.Judged judged) {
                meters.judged(judged.result());
            }
            timing.ends();
            meters.stages(timing);
            return outcome;
        }

        /** A client may wait for its record before it sends the next line. */
        private void tellAllUnlessMoreIsThere(LineReader lines, OutputStream out) throws IOException {
            if (!lines.ready()) {
                tellAll(out);
            }
        }

        private void tellAll(OutputStream out) throws IOException {
            while (!begun.isEmpty()) {
                tellOldest(out);
            }
        }

        private void tellOldest(OutputStream out) throws IOException {
            Begun oldest = begun.remove();
            out.write(records.next(outcome(oldest)));
            out.flush();
        }

        /** What became of a plan; a defect of ours, or a plan that takes too long, does not stop the others. */
        private Outcome outcome(Begun plan) {
            try {
                return plan.outcome().result();
            } catch (Refused refused) {
                return new Outcome.Refused(plan.name(), "", refused.problem());
            } catch (RuntimeException | StackOverflowError e) {
                return new Outcome.Refused(plan.name(), "", Failures.logged(e, String.valueOf((Object)
                        context.req().getAttribute(RequestId.ATTRIBUTE))));
            }
        }
    }
}
