package dev.underprop.app.report;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.CheckVerdict;
import dev.underprop.api.model.PlanFinding;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The checks of an answer that ask for something to be done. */
public final class Findings {
    private static final Comparator<CheckResult> BY_SEVERITY = Comparator.comparingDouble(CheckText::severity);

    private Findings() {}

    /** True when a check fails or was not made. */
    public static boolean is(CheckResult check) {
        return fails(check) || check.getVerdict() == CheckVerdict.NOT_CHECKED;
    }

    /** True when a check fails. */
    public static boolean fails(CheckResult check) {
        return check.getVerdict() == CheckVerdict.FAIL;
    }

    /** The ratio as reports write it; infinite when there is no capacity at all. */
    public static double ratio(CheckResult check) {
        Double ratio = check.getRatio();
        return ratio == null ? Double.POSITIVE_INFINITY : CheckText.written(ratio);
    }

    /** Check, place, verdict and ratio alone. */
    public static PlanFinding of(CheckResult check) {
        PlanFinding finding = new PlanFinding()
                .check(check.getCheck())
                .place(check.getPlace())
                .verdict(check.getVerdict());
        Double ratio = check.getRatio();
        return ratio == null ? finding : finding.ratio(ratio);
    }

    /** The check that is nearest to its limit, or furthest beyond; nothing when none was made. */
    static Optional<CheckResult> worst(List<CheckResult> checks) {
        return checks.stream()
                .filter(check -> fails(check) || check.getVerdict() == CheckVerdict.PASS)
                .reduce((one, other) -> BY_SEVERITY.compare(other, one) > 0 ? other : one);
    }
}
