package dev.underprop.app.report;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** What a person reads of a search for pads. */
public final class SizingReport {
    private final PrintStream out;
    private final Paint paint;

    private SizingReport(PrintStream out, Paint paint) {
        this.out = out;
        this.paint = paint;
    }

    /**
     * A report to the standard output, or to the error output when the other belongs to a program.
     *
     * @param machine whether the standard output belongs to a program
     */
    public static SizingReport on(boolean machine) {
        FileDescriptor descriptor = machine ? FileDescriptor.err : FileDescriptor.out;
        PrintStream out = new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
        return new SizingReport(out, machine ? new Paint(false) : Paint.forTerminal());
    }

    /** Says what was found. */
    public void say(Outcome outcome) {
        if (outcome instanceof Outcome.Sized sized) {
            out.print(new SizingText(paint).of(sized));
        } else if (outcome instanceof Outcome.Refused refused) {
            out.print(new ProblemText(paint).of(refused));
        }
        out.flush();
    }
}
