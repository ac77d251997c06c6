package dev.underprop.app.batch;

import dev.underprop.api.model.PlanCheck;
import dev.underprop.app.report.Outcome;
import dev.underprop.app.report.ProblemKind;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.tree.Limits;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Reads the file of a plan and has it judged. */
final class PlanReader {
    private final PlanDoor door = new PlanDoor();
    private final AnswerOptions options;

    PlanReader(AnswerOptions options) {
        this.options = options;
    }

    Outcome judge(PlanFile file) {
        if (!file.faults().isEmpty()) {
            return unread(file, file.faults());
        }
        if (Files.exists(file.path()) && !Files.isRegularFile(file.path())) {
            return unread(file, List.of(PathFaults.notFile()));
        }
        byte[] text;
        try {
            text = read(file.path());
        } catch (IOException e) {
            return unread(file, List.of(PathFaults.of(e)));
        }
        return outcome(file, door.check(text, file.format(), options));
    }

    /** At most one byte more than a plan may have: enough for the door to see that it is too large. */
    static byte[] read(Path path) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(Limits.USUAL.bytes() + 1);
        }
    }

    private static Outcome outcome(PlanFile file, Answer<PlanCheck> answer) {
        if (answer instanceof Answer.Judged<PlanCheck> judged) {
            return new Outcome.Judged(file.name(), judged.model());
        }
        if (answer instanceof Answer.Faulty<PlanCheck> faulty) {
            return Outcome.refused(file.name(), ProblemKind.FAULTY, "plan", faulty.faults());
        }
        if (answer instanceof Answer.Unreadable<PlanCheck> unreadable) {
            return unread(file, unreadable.faults());
        }
        throw new IllegalStateException("Unknown kind of answer");
    }

    private static Outcome unread(PlanFile file, List<Fault> faults) {
        return Outcome.refused(file.name(), ProblemKind.UNREADABLE, "file", faults);
    }
}
