package dev.underprop.app.batch;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanCheck;
import dev.underprop.wire.door.AnswerOptions;
import dev.underprop.wire.door.PlanDoor;
import dev.underprop.wire.door.Watch;
import dev.underprop.wire.place.Whereabouts;
import dev.underprop.wire.record.Entry;
import dev.underprop.wire.record.Findings;
import dev.underprop.wire.record.Outcome;
import dev.underprop.wire.record.Outcomes;
import dev.underprop.wire.tree.Place;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Has one entry judged; whatever happens there is an outcome. Safe for any number of threads. */
public final class PlanJudge {
    private final Outcomes outcomes;
    private final boolean lines;

    /**
     * A judge.
     *
     * @param door reads and judges
     * @param options how answers are written
     * @param lines whether to look up where in the text the places of findings stand
     */
    public PlanJudge(PlanDoor door, AnswerOptions options, boolean lines) {
        this.outcomes = new Outcomes(door, options);
        this.lines = lines;
    }

    /** Whether it looks up where the places of findings stand. */
    boolean lines() {
        return lines;
    }

    /** What becomes of an entry. A defect of ours is an outcome too, with an id under which it is reported. */
    Outcome judge(Entry entry) {
        try {
            return entry instanceof Entry.Text text ? judge(text) : outcomes.of(entry);
        } catch (RuntimeException | StackOverflowError e) {
            PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
            return Outcomes.failed(entry.name(), Batch.reportDefect(e, err));
        }
    }

    /** What becomes of the text of a plan. */
    public Outcome judge(Entry.Text text) {
        return judge(text, Watch.NONE);
    }

    /** The same, watched. */
    public Outcome judge(Entry.Text text, Watch watch) {
        Outcome outcome = outcomes.of(text, watch);
        return lines && outcome instanceof Outcome.Judged judged
                ? new Outcome.Judged(judged.name(), judged.result(), lines(text, judged.result()))
                : outcome;
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
}
