package dev.underprop.engine.lift;

import java.util.ArrayList;
import java.util.List;

/** When each stage may begin: after the hold, and with no more in any 24 hours than the limit per day allows. */
final class Calendar {

    private static final double DAY = 24;
    private static final double ROUNDING = 1e-9;

    private final LiftLimits limits;
    private final List<double[]> raises = new ArrayList<>();
    private final List<Double> starts = new ArrayList<>();

    Calendar(LiftLimits limits) {
        this.limits = limits;
    }

    /** Hours after the first stage at which one more may begin. */
    double next(double[] raise) {
        double start = starts.isEmpty() ? 0 : starts.get(starts.size() - 1) + limits.hold() / 3600;
        if (!Double.isNaN(limits.perDay())) {
            for (int k = 0; k < starts.size(); k++) {
                // The oldest stage that must have left the window first.
                start = exceeds(start, raise) && starts.get(k) + DAY > start ? starts.get(k) + DAY : start;
            }
        }
        starts.add(start);
        raises.add(raise);
        return start;
    }

    private boolean exceeds(double start, double[] raise) {
        for (int p = 0; p < raise.length; p++) {
            double sum = raise[p];
            for (int k = 0; k < starts.size(); k++) {
                sum += starts.get(k) > start - DAY + ROUNDING ? raises.get(k)[p] : 0;
            }
            if (sum > limits.perDay() * (1 + ROUNDING)) {
                return true;
            }
        }
        return false;
    }
}
