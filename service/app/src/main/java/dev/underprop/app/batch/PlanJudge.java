package dev.underprop.app.batch;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.app.report.Findings;
import dev.underprop.app.report.Outcome;
import dev.underprop.app.report.ProblemKind;
import dev.underprop.app.source.Entry;
import dev.underprop.app.source.EntryName;
import dev.underprop.wire.door.Answer;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.door.Watch;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.place.Whereabouts;
import dev.underprop.wire.tree.Place;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Has one entry judged; whatever happens there is an outcome. Safe for any number of threads. */
public final class PlanJudge {
    private final PlanDoor door;
    private final AnswerOptions options;
    private final boolean lines;

    /**
     * A judge.
     *
     * @param door reads and judges
     * @param options how answers are written
     * @param lines whether to look up where in the text the places of findings stand
     */
    public PlanJudge(PlanDoor door, AnswerOptions options, boolean lines) {
        this.door = door;
        this.options = options;
        this.lines = lines;
    }

    /** Whether it looks up where the places of findings stand. */
    boolean lines() {
        return lines;
    }

    /** What becomes of an entry. A defect of ours is an outcome too, with an id under which it is reported. */
    Outcome judge(Entry entry) {
        try {
            return entry instanceof Entry.Text text ? judge(text) : wrong((Entry.Wrong) entry);
        } catch (RuntimeException | StackOverflowError e) {
            PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
            return new Outcome.Refused(
                    entry.name(),
                    "",
                    ProblemKind.INTERNAL_ERROR
                            .problem("Nothing can be said about the plan. Please report the id of this problem.")
                            .instance(Batch.reportDefect(e, err)));
        }
    }

    private static Outcome wrong(Entry.Wrong wrong) {
        return Outcome.refused(wrong.name(), "", ProblemKind.UNREADABLE, "file", List.of(wrong.fault()));
    }

    /** What becomes of the text of a plan. */
    public Outcome judge(Entry.Text text) {
        return judge(text, Watch.NONE);
    }

    /** The same, watched. */
    public Outcome judge(Entry.Text text, Watch watch) {
        EntryName name = text.name();
        Answer<PlanCheck> answer = door.check(text.bytes(), text.format(), options, watch);
        if (answer instanceof Answer.Judged<PlanCheck> judged) {
            return new Outcome.Judged(name, judged.model(), lines ? lines(text, judged.model()) : Map.of());
        }
        if (answer instanceof Answer.Faulty<PlanCheck> faulty) {
            return Outcome.refused(name, faulty.id(), ProblemKind.FAULTY, "plan", faulty.faults());
        }
        if (answer instanceof Answer.Unreadable<PlanCheck> unreadable) {
            return Outcome.refused(
                    name, "", ProblemKind.UNREADABLE, name.line() > 0 ? "line" : "file", unreadable.faults());
        }
        throw new IllegalStateException("Unknown kind of answer");
    }

    /** Where the places of findings stand; a plan that is a line of a file stands on that line whatever the place. */
    static Map<String, Place> lines(Entry.Text text, PlanCheck result) {
        List<String> places = result.getChecks().stream()
                .filter(Findings::is)
                .map(CheckResult::getPlace)
                .distinct()
                .toList();
        Map<String, Place> found = Whereabouts.find(places, text.bytes(), text.format());
        if (text.name().line() == 0) {
            return found;
        }
        Map<String, Place> shifted = new LinkedHashMap<>();
        found.forEach((word, place) -> shifted.put(word, new Place(text.name().line(), place.column())));
        return shifted;
    }

    /** The fault of a plan whose key was given before. */
    static Outcome repeated(Outcome outcome, String first) {
        Fault fault = Fault.of(
                        "id-repeated",
                        "The same id stands in this run before, so that their results could not be told apart.",
                        "Give each plan an id of its own. It stood before in: " + first + ".")
                .withPointer("/id")
                .withGot(outcome.key());
        return Outcome.refused(outcome.name(), "", ProblemKind.FAULTY, "plan", List.of(fault));
    }
}
