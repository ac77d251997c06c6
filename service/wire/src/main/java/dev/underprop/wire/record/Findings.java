package dev.underprop.wire.record;

import dev.underprop.api.model.CheckResult;
import dev.underprop.api.model.CheckVerdict;
import dev.underprop.api.model.PlanFinding;
import dev.underprop.wire.quantity.ValueWriter;
import java.util.List;
import java.util.Optional;

/** The checks of an answer that ask for something to be done. */
public final class Findings {
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
        return ratio == null ? Double.POSITIVE_INFINITY : written(ratio);
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
    public static Optional<CheckResult> worst(List<CheckResult> checks) {
        Optional<CheckResult> worst = Optional.empty();
        double most = Double.NEGATIVE_INFINITY;
        for (CheckResult check : checks) {
            if (fails(check) || check.getVerdict() == CheckVerdict.PASS) {
                double severity = severity(check);
                if (worst.isEmpty() || Double.compare(severity, most) > 0) {
                    worst = Optional.of(check);
                    most = severity;
                }
            }
        }
        return worst;
    }

    /** How far beyond its limit a check is; one without capacity is beyond all others. */
    public static double severity(CheckResult check) {
        Double ratio = check.getRatio();
        if (ratio == null) {
            return fails(check) ? Double.POSITIVE_INFINITY : 0;
        }
        return written(ratio);
    }

    /** The number as reports write it, so that what is read back from one is the same in everything that follows. */
    public static double written(double value) {
        return ValueWriter.written(value);
    }
}
