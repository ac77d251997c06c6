package dev.underprop.app.report;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.wire.door.Documents;
import dev.underprop.wire.record.Findings;
import dev.underprop.wire.record.Outcome;
import java.io.ByteArrayOutputStream;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A list of the findings of a run, to be accepted: a finding a line. Faults and unstable plans are never on it.
 */
public final class BaselineLines implements Report {
    /** The first line, by which such a list is known. */
    public static final String HEAD = "{\"baseline\":\"underprop check\",\"version\":1}";

    private final Sink sink;

    BaselineLines(Sink sink) {
        this.sink = sink;
        sink.write(HEAD + "\n");
    }

    @Override
    public Runnable prepare(Judgement judgement) {
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        if (judgement.outcome() instanceof Outcome.Judged judged
                && judged.result().getVerdict() != PlanVerdict.UNSTABLE) {
            judged.result().getChecks().stream()
                    .filter(Findings::is)
                    .forEach(check -> lines.writeBytes(Documents.json(line(judged.key(), check), false)));
        }
        return () -> sink.write(lines.toByteArray());
    }

    private static Map<String, Object> line(String key, CheckResult check) {
        Map<String, Object> line = new LinkedHashMap<>();
        line.put("plan", key);
        line.put("check", check.getCheck());
        line.put("place", check.getPlace());
        line.put("verdict", check.getVerdict());
        Double ratio = check.getRatio();
        if (ratio != null && Findings.fails(check)) {
            line.put("ratio", ratio);
        }
        return line;
    }

    @Override
    public void complete(End end) {
        if (end.complete()) {
            sink.complete();
        }
    }

    @Override
    public void close() {
        sink.close();
    }
}
