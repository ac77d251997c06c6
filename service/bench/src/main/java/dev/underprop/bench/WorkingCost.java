package dev.underprop.bench;

import dev.underprop.engine.assess.Assessor;
import dev.underprop.engine.plan.JobPlan;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What calculation records cost: processor time of the thread for an assessment with and without them, by turns in one run, the
 * median of many after warming up.
 */
public final class WorkingCost {

    private static final int WARM = 20;
    private static final int ROUNDS = 41;

    private WorkingCost() {}

    /** Prints a line a plan. */
    public static void main(String[] args) {
        for (String demo : List.of("reference.yaml", "adequate.yaml", "sill-out-tied.yaml")) {
            System.out.println(demo + ": " + measured(DemoPlans.engine(DemoPlans.demo(demo))));
        }
        System.out.println("20x1x4: " + measured(DemoPlans.floor(20, 1, 4)));
    }

    private static String measured(JobPlan plan) {
        double[] without = new double[ROUNDS];
        double[] with = new double[ROUNDS];
        for (int i = -WARM; i < ROUNDS; i++) {
            double plain = millis(plan, false);
            double told = millis(plan, true);
            if (i >= 0) {
                without[i] = plain;
                with[i] = told;
            }
        }
        Arrays.sort(without);
        Arrays.sort(with);
        double off = without[ROUNDS / 2];
        double on = with[ROUNDS / 2];
        return String.format(Locale.ROOT, "%.2f ms without, %.2f ms with, ratio %.3f", off, on, on / off);
    }

    private static double millis(JobPlan plan, boolean working) {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        int checks = Assessor.assess(plan, working).checks().size();
        long spent = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
        if (checks == 0) {
            throw new IllegalStateException("nothing was checked");
        }
        return spent / 1e6;
    }
}
