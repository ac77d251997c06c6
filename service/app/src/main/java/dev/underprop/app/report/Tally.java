package dev.underprop.app.report;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.PlanVerdict;
import dev.underprop.wire.record.Outcome;
import dev.underprop.wire.record.Sum;
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

    private final Sum sum = new Sum();
    private final Map<String, Findings> byCheck = new LinkedHashMap<>();
    private final Map<String, Integer> changes = new LinkedHashMap<>();
    private int accepted;
    private int open;

    /** Counts one plan. */
    public void add(Judgement judgement) {
        sum.add(judgement.outcome());
        judgement.change().ifPresent(change -> changes.merge(change.getWhat(), 1, Integer::sum));
        if (judgement.outcome() instanceof Outcome.Judged judged) {
            judged.result().getChecks().forEach(check -> count(check, judgement));
        }
    }

    private void count(CheckResult check, Judgement judgement) {
        if (!dev.underprop.wire.record.Findings.is(check)) {
            return;
        }
        Findings findings = byCheck.computeIfAbsent(check.getCheck(), id -> new Findings(check.getTitle()));
        if (judgement.accepts(check)) {
            findings.accepted++;
            accepted++;
        } else if (dev.underprop.wire.record.Findings.fails(check)) {
            findings.failed++;
            open++;
        } else {
            findings.notChecked++;
            open++;
        }
    }

    /** Plans so far. */
    public int plans() {
        return sum.plans();
    }

    /** Plans with a verdict. */
    int count(PlanVerdict verdict) {
        return sum.count(verdict);
    }

    /** Plans without a verdict. */
    public int refused() {
        return sum.refused();
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

    /** Verdicts alone. */
    public Sum sum() {
        return sum;
    }
}
