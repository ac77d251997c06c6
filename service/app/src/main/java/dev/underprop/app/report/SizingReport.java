package dev.underprop.app.report;

import dev.underprop.api.model.PadSizing;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.record.Outcome;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a person and a program read of a search for pads. */
public final class SizingReport {
    private final String file;

    private SizingReport(String file) {
        this.file = file;
    }

    /**
     * A report.
     *
     * @param file where the record goes, {@code -} for the standard output, empty for nowhere; people's text goes to the standard
     *     output, or to the error output when the other belongs to a program
     */
    public static SizingReport to(String file) {
        return new SizingReport(file);
    }

    /** Tells what was found. */
    public void found(EntryName name, PadSizing result) {
        record(name, "result", result);
        say(new SizingText(paint()).of(name.key(), result));
    }

    /** Tells why nothing was looked for. */
    public void refused(Outcome.Refused refused) {
        record(refused.name(), "problem", refused.problem());
        say(new ProblemText(paint()).of(refused));
    }

    private boolean machine() {
        return file.equals(Sink.STANDARD_OUTPUT);
    }

    private Paint paint() {
        return machine() ? new Paint(false) : Paint.forTerminal();
    }

    private void say(String text) {
        try (Sink out = machine() ? Sink.error() : Sink.to(Sink.STANDARD_OUTPUT)) {
            out.write(text);
            out.flush();
        }
    }

    private void record(EntryName name, String kind, Object what) {
        if (file.isEmpty()) {
            return;
        }
        Map<String, Object> record = new LinkedHashMap<>();
        record.put("path", name.path());
        record.put(kind, what);
        try (Sink out = Sink.to(file)) {
            out.write(Documents.json(List.of(record), true));
            out.complete();
        }
    }
}
