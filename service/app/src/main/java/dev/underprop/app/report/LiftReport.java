package dev.underprop.app.report;

import dev.underprop.api.model.LiftPlan;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.record.Outcome;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Writes a lift to the standard output: words for the crew, or JSON for a program, with the same content. */
public final class LiftReport {
    private final boolean json;

    /**
     * A report.
     *
     * @param json whether to write JSON
     */
    public LiftReport(boolean json) {
        this.json = json;
    }

    /** A lift that was planned, or that cannot be. */
    public void plan(String path, LiftPlan plan) {
        try (PrintStream out = on(FileDescriptor.out)) {
            if (json) {
                out.writeBytes(Documents.json(plan, true));
            } else {
                out.print(new LiftText(Paint.forTerminal()).of(path, plan));
            }
        }
    }

    /** A plan that could not be read, or makes no sense; people read it on the error output where a program reads the other. */
    public void refused(Outcome.Refused problem) {
        try (PrintStream out = on(json ? FileDescriptor.err : FileDescriptor.out)) {
            out.println(new ProblemText(json ? new Paint(false) : Paint.forTerminal()).of(problem));
        }
    }

    private static PrintStream on(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
    }
}
