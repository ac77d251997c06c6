package dev.underprop.app.earlier;

import dev.underprop.app.report.Judgement;
import dev.underprop.wire.record.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Holds outcomes against accepted findings and earlier results. */
public final class Earlier {
    private final Accepted accepted;
    private final Optional<EarlierResults> results;

    private Earlier(Accepted accepted, Optional<EarlierResults> results) {
        this.accepted = accepted;
        this.results = results;
    }

    /**
     * Reads what was known.
     *
     * @param baseline file of accepted findings, or the empty text
     * @param against file of earlier results, or the empty text
     * @throws java.io.UncheckedIOException when one cannot be read, or is not such a file
     */
    public static Earlier read(String baseline, String against) {
        return new Earlier(
                baseline.isEmpty() ? Accepted.none() : Accepted.read(baseline),
                against.isEmpty() ? Optional.empty() : Optional.of(EarlierResults.read(against)));
    }

    /** An outcome held against what was known; safe for any number of threads. */
    public Judgement judge(Outcome outcome) {
        return new Judgement(outcome, accepted.covers(outcome), results.flatMap(all -> all.change(outcome)));
    }

    /** Notes that an outcome was met, on one thread. */
    public void met(Outcome outcome) {
        accepted.met(outcome);
        results.ifPresent(all -> all.met(outcome.key()));
    }

    /**
     * What is left over: accepted findings and earlier plans that were not met.
     *
     * @param complete whether every plan was reached; otherwise nothing can be said
     */
    public List<String> remarks(boolean complete) {
        if (!complete) {
            return List.of();
        }
        List<String> remarks = new ArrayList<>(accepted.stale());
        results.ifPresent(all -> remarks.addAll(all.gone()));
        return remarks;
    }
}
