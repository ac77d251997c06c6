package dev.underprop.wire.record;

import dev.underprop.api.model.PlanCheck;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.api.model.Problem;
import dev.underprop.api.model.ProblemError;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.tree.Place;
import java.util.List;
import java.util.Map;

/** What became of one plan. */
public sealed interface Outcome {

    /** Where the plan stands. */
    EntryName name();

    /** What the plan is known by: its id, or where it stands when it has none. */
    String key();

    /**
     * The plan was judged, whatever the verdict.
     *
     * @param name where it stands
     * @param result the answer
     * @param lines where in its text the places stand that the answer speaks of; empty unless a report asks for it
     */
    record Judged(EntryName name, PlanCheck result, Map<String, Place> lines) implements Outcome {
        public Judged {
            lines = Map.copyOf(lines);
        }

        @Override
        public String key() {
            String id = result.getId();
            return id == null ? name.key() : id;
        }

        /** True when nothing fails and everything required was checked. */
        public boolean adequate() {
            return result.getVerdict() == PlanVerdict.ADEQUATE;
        }
    }

    /**
     * There is no verdict.
     *
     * @param name where the plan stands
     * @param id id of the plan where it can be read, else the empty text
     * @param problem why
     */
    record Refused(EntryName name, String id, Problem problem) implements Outcome {
        @Override
        public String key() {
            return id.isEmpty() ? name.key() : id;
        }
    }

    /** Refused for the faults of a subject such as {@code plan}. */
    static Refused refused(EntryName name, String id, ProblemForm form, String subject, List<Fault> faults) {
        Problem problem = form.problemOf(subject, faults);
        if (name.line() > 0) {
            problem.getErrors().forEach(error -> shift(error, name.line()));
        }
        return new Refused(name, id, problem);
    }

    /** The line of a plan is the line of the file it stands on. */
    private static void shift(ProblemError error, int line) {
        Integer column = error.getColumn();
        error.line(line).column(column == null ? 1 : column);
    }
}
