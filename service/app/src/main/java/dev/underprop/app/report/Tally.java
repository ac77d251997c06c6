package dev.underprop.app.report;

import dev.underprop.api.model.BatchSummary;
import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanVerdict;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;

/** How many plans came to what, and which checks ask for something, counted as they come. */
public final class Tally {
    /** Findings of one check over all plans. */
    static final class Findings {
        private final String title;
        private int failed;
        private int notChecked;
        private int accepted;

        Findings(String title) {
            this.title = title;
        }

        String title() {
            return title;
        }

        int failed() {
            return failed;
        }

        int notChecked() {
            return notChecked;
        }

        int accepted() {
            return accepted;
        }
    }

    private final Map<PlanVerdict, Integer> verdicts = new EnumMap<>(PlanVerdict.class);
    private final Map<String, Findings> byCheck = new LinkedHashMap<>();
    private final Map<String, Integer> changes = new LinkedHashMap<>();
    private int plans;
    private int refused;
    private int accepted;
    private int open;

    /** Counts one plan. */
    public void add(Judgement judgement) {
        plans++;
        judgement.change().ifPresent(change -> changes.merge(change.getWhat(), 1, Integer::sum));
        if (judgement.outcome() instanceof Outcome.Judged judged) {
            verdicts.merge(judged.result().getVerdict(), 1, Integer::sum);
            judged.result().getChecks().forEach(check -> count(check, judgement));
        } else {
            refused++;
        }
    }

    private void count(CheckResult check, Judgement judgement) {
        if (!dev.underprop.app.report.Findings.is(check)) {
            return;
        }
        Findings findings = byCheck.computeIfAbsent(check.getCheck(), id -> new Findings(check.getTitle()));
        if (judgement.accepts(check)) {
            findings.accepted++;
            accepted++;
        } else if (dev.underprop.app.report.Findings.fails(check)) {
            findings.failed++;
            open++;
        } else {
            findings.notChecked++;
            open++;
        }
    }

    /** Plans so far. */
    public int plans() {
        return plans;
    }

    /** Plans with a verdict. */
    int count(PlanVerdict verdict) {
        return verdicts.getOrDefault(verdict, 0);
    }

    /** Plans without a verdict. */
    public int refused() {
        return refused;
    }

    /** Findings that are accepted. */
    int accepted() {
        return accepted;
    }

    /** Findings that are not accepted. */
    public int open() {
        return open;
    }

    /** Findings by check, in the order in which they came. */
    Map<String, Findings> byCheck() {
        return byCheck;
    }

    /** Plans by kind of change. */
    Map<String, Integer> changes() {
        return changes;
    }

    /** The sum as the contract writes it. */
    public BatchSummary summary() {
        return new BatchSummary()
                .plans(plans)
                .adequate(count(PlanVerdict.ADEQUATE))
                .incomplete(count(PlanVerdict.INCOMPLETE))
                .inadequate(count(PlanVerdict.INADEQUATE))
                .unstable(count(PlanVerdict.UNSTABLE))
                .notJudged(refused);
    }
}
