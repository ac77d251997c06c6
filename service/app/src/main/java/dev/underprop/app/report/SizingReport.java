package dev.underprop.app.report;

import dev.underprop.api.model.PadSizing;
import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.record.Outcome;

/** What a person and a program read of a search for pads. */
public final class SizingReport {
    private final OneRecord record;

    private SizingReport(OneRecord record) {
        this.record = record;
    }

    /**
     * A report.
     *
     * @param file where the record goes, {@code -} for the standard output, empty for nowhere; people's text goes to the standard
     *     output, or to the error output when the other belongs to a program
     */
    public static SizingReport to(String file) {
        return new SizingReport(new OneRecord(file));
    }

    /** Tells what was found. */
    public void found(EntryName name, PadSizing result) {
        record.write(name, "result", result);
        record.say(new SizingText(record.paint()).of(name.key(), result));
    }

    /** Tells why nothing was looked for. */
    public void refused(Outcome.Refused refused) {
        record.write(refused.name(), "problem", refused.problem());
        record.say(new ProblemText(record.paint()).of(refused));
    }
}
