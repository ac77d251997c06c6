package dev.underprop.app.report;

import dev.underprop.api.model.PlanVerdict;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What a person reads: each plan as it is judged, then the sum and, once, the caution. */
public final class TerminalReport implements AutoCloseable {
    private final PrintStream out;
    private final Paint paint;
    private final Set<String> cautions = new LinkedHashSet<>();
    private final Map<PlanVerdict, Integer> verdicts = new TreeMap<>();
    private int refused;

    private TerminalReport(PrintStream out, Paint paint) {
        this.out = out;
        this.paint = paint;
    }

    /**
     * A report to the standard output, or to the error output when the other belongs to a program.
     *
     * @param machine whether the standard output belongs to a program
     */
    public static TerminalReport on(boolean machine) {
        FileDescriptor descriptor = machine ? FileDescriptor.err : FileDescriptor.out;
        PrintStream out = new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
        return new TerminalReport(out, machine ? new Paint(false) : Paint.forTerminal());
    }

    /** Says what became of one file. */
    public void add(Outcome outcome) {
        if (outcome instanceof Outcome.Judged judged) {
            cautions.addAll(judged.result().getCautions());
            verdicts.merge(judged.result().getVerdict(), 1, Integer::sum);
            out.println(new PlanText(paint).of(judged));
        } else if (outcome instanceof Outcome.Refused problem) {
            refused++;
            out.println(new ProblemText(paint).of(problem));
        }
        out.flush();
    }

    /** Says the sum and the caution. */
    public void end() {
        List<String> parts = new ArrayList<>();
        verdicts.forEach(
                (verdict, count) -> parts.add(count + " " + verdict.getValue().toLowerCase(Locale.ROOT)));
        if (refused > 0) {
            parts.add(refused + " not judged");
        }
        int sum =
                refused + verdicts.values().stream().mapToInt(Integer::intValue).sum();
        out.println(paint.strong(sum == 1 ? "1 plan" : sum + " plans") + ": " + String.join(", ", parts) + ".");
        cautions.forEach(caution -> out.print(Lines.wrapped("", 0, caution)));
        out.flush();
    }

    @Override
    public void close() {
        out.flush();
    }
}
