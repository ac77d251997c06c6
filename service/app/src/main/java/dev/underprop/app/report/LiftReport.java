package dev.underprop.app.report;

import dev.underprop.api.model.LiftPlan;
import dev.underprop.wire.record.EntryName;
import dev.underprop.wire.record.Outcome;

/** What the crew and a program read of a lift: words, and a record with the same content. */
public final class LiftReport {
    private final OneRecord record;

    private LiftReport(OneRecord record) {
        this.record = record;
    }

    /**
     * A report.
     *
     * @param file where the record goes, {@code -} for the standard output, empty for nowhere; people's text goes to the standard
     *     output, or to the error output when the other belongs to a program
     */
    public static LiftReport to(String file) {
        return new LiftReport(new OneRecord(file));
    }

    /** A lift that was planned, or that cannot be. */
    public void planned(EntryName name, LiftPlan plan) {
        record.write(name, "result", plan);
        record.say(new LiftText(record.paint()).of(name.key(), plan));
    }

    /** A plan that could not be read, or makes no sense. */
    public void refused(Outcome.Refused refused) {
        record.write(refused.name(), "problem", refused.problem());
        record.say(new ProblemText(record.paint()).of(refused) + "\n");
    }
}
