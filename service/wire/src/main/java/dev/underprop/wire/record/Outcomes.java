package dev.underprop.wire.record;

import dev.underprop.api.model.PlanCheck;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.door.Watch;
import dev.underprop.wire.fault.Fault;
import java.util.List;
import java.util.Map;

/** Has plans judged, one at a time; whatever is wrong with one is its outcome. Safe for any number of threads. */
public final class Outcomes {
    private final PlanDoor door;
    private final AnswerOptions options;

    /**
     * Outcomes of plans.
     *
     * @param door reads and judges
     * @param options how answers are written
     */
    public Outcomes(PlanDoor door, AnswerOptions options) {
        this.door = door;
        this.options = options;
    }

    /** What becomes of an entry. */
    public Outcome of(Entry entry) {
        return entry instanceof Entry.Text text ? of(text, Watch.NONE) : wrong((Entry.Wrong) entry);
    }

    /** What becomes of the text of a plan, watched. */
    public Outcome of(Entry.Text text, Watch watch) {
        EntryName name = text.name();
        Answer<PlanCheck> answer = door.check(text.bytes(), text.format(), options, watch);
        if (answer instanceof Answer.Judged<PlanCheck> judged) {
            return new Outcome.Judged(name, judged.model(), Map.of());
        }
        if (answer instanceof Answer.Faulty<PlanCheck> faulty) {
            return Outcome.refused(name, faulty.id(), ProblemForm.FAULTY, "plan", faulty.faults());
        }
        if (answer instanceof Answer.Unreadable<PlanCheck> unreadable) {
            return Outcome.refused(
                    name, "", ProblemForm.UNREADABLE, name.line() > 0 ? "line" : "file", unreadable.faults());
        }
        throw new IllegalStateException("Unknown kind of answer");
    }

    private static Outcome wrong(Entry.Wrong wrong) {
        return Outcome.refused(wrong.name(), "", ProblemForm.UNREADABLE, "file", List.of(wrong.fault()));
    }

    /**
     * The outcome of a plan over which the program itself has failed.
     *
     * @param name where the plan stands
     * @param instance the id under which the defect is reported
     */
    public static Outcome failed(EntryName name, String instance) {
        String detail = "Nothing can be said about the plan. Please report the id of this problem.";
        return new Outcome.Refused(
                name, "", ProblemForm.INTERNAL_ERROR.problem(detail, List.of()).instance(instance));
    }

    /**
     * The fault of a plan whose key was given before.
     *
     * @param key the key
     * @param name where the plan stands
     * @param first where the one before stands
     */
    public static Outcome repeated(String key, EntryName name, EntryName first) {
        Fault fault = Fault.of(
                        "id-repeated",
                        "The same id stands in this run before, so that their results could not be told apart.",
                        "Give each plan an id of its own. It stood before in: " + first.key() + ".")
                .withPointer("/id")
                .withGot(key);
        return Outcome.refused(name, "", ProblemForm.FAULTY, "plan", List.of(fault));
    }
}
