package dev.underprop.wire.record;

import dev.underprop.api.model.BatchSummary;
import dev.underprop.api.model.PlanCheckRecord;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.wire.door.Documents;
import java.io.Serializable;

/** How many plans came to what, counted as they come; sums of parts add up to the sum of the whole. */
public final class Sum implements Serializable {
    private static final long serialVersionUID = 1L;

    private static final PlanVerdict[] VERDICTS = PlanVerdict.values();

    /** Plans by verdict, and behind them those without. */
    private final int[] counts = new int[VERDICTS.length + 1];

    /** Counts one plan. */
    public void add(Outcome outcome) {
        add(mark(outcome));
    }

    /** Counts one plan by its mark. */
    public void add(int mark) {
        counts[mark] = Math.incrementExact(counts[mark]);
    }

    /** What a plan is counted by. */
    public static int mark(Outcome outcome) {
        return outcome instanceof Outcome.Judged judged
                ? judged.result().getVerdict().ordinal()
                : VERDICTS.length;
    }

    /** Counts all plans of another sum too. */
    public void add(Sum other) {
        for (int i = 0; i < counts.length; i++) {
            counts[i] = Math.addExact(counts[i], other.counts[i]);
        }
    }

    /** Plans so far. */
    public int plans() {
        int plans = 0;
        for (int count : counts) {
            plans = Math.addExact(plans, count);
        }
        return plans;
    }

    /** Plans without a verdict. */
    public int refused() {
        return counts[VERDICTS.length];
    }

    /** Plans with a verdict. */
    public int count(PlanVerdict verdict) {
        return counts[verdict.ordinal()];
    }

    /** The sum as the contract writes it. */
    public BatchSummary summary() {
        return new BatchSummary()
                .plans(plans())
                .adequate(count(PlanVerdict.ADEQUATE))
                .incomplete(count(PlanVerdict.INCOMPLETE))
                .inadequate(count(PlanVerdict.INADEQUATE))
                .unstable(count(PlanVerdict.UNSTABLE))
                .notJudged(refused());
    }

    /**
     * The last record of a run, after which there is nothing, with its end of line.
     *
     * @param complete whether every plan was reached
     */
    public byte[] last(boolean complete) {
        return Documents.json(new PlanCheckRecord().summary(summary()).complete(complete), false);
    }
}
