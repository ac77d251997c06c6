package dev.underprop.bench;

import dev.underprop.engine.lift.LiftPlan;
import dev.underprop.engine.lift.LiftRequest;
import dev.underprop.engine.lift.Lifter;
import dev.underprop.engine.plan.JobPlan;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;

/**
 * Processor time of this thread for lifts of a number of posts by a number of stages, whatever else the machine does: the median
 * and the least of as many plans as fit in a number of seconds after a third of that to warm up, three at least.
 *
 * <pre>
 * java -cp service/bench/target/benchmarks.jar dev.underprop.bench.LiftTimes 4,8,12 4,12 10
 * </pre>
 */
public final class LiftTimes {

    private static final double SECOND = 1e9;

    private LiftTimes() {}

    /** @param args numbers of posts, of stages, seconds for each */
    public static void main(String[] args) {
        double seconds = Double.parseDouble(args[2]);
        System.out.println("posts  stages    median      least   plans  solves  turns  outcome");
        for (int posts : numbers(args[0])) {
            JobPlan plan = DemoPlans.engine(LiftPlans.text(posts));
            for (int stages : numbers(args[1])) {
                LiftRequest request = LiftBenchmark.request(plan, stages);
                LiftPlan lift = Lifter.plan(plan, request);
                times(plan, request, seconds / 3);
                double[] times = times(plan, request, seconds);
                int turns =
                        lift.stages().stream().mapToInt(s -> s.turns().size()).sum();
                System.out.printf(
                        "%5d  %6d  %8.1f   %8.1f  %6d  %6d  %5d  %s%n",
                        posts,
                        stages,
                        times[times.length / 2],
                        times[0],
                        times.length,
                        lift.basis().solved(),
                        turns,
                        lift.outcome() + " " + lift.reason());
            }
        }
    }

    /** Milliseconds of each, ascending. */
    private static double[] times(JobPlan plan, LiftRequest request, double seconds) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        double[] times = new double[3];
        int n = 0;
        long end = System.nanoTime() + (long) (seconds * SECOND);
        while (n < 3 || System.nanoTime() < end) {
            long before = threads.getCurrentThreadCpuTime();
            Lifter.plan(plan, request);
            times = n < times.length ? times : Arrays.copyOf(times, 2 * n);
            times[n++] = (threads.getCurrentThreadCpuTime() - before) / 1e6;
        }
        times = Arrays.copyOf(times, n);
        Arrays.sort(times);
        return times;
    }

    private static int[] numbers(String list) {
        return Arrays.stream(list.split(",", -1)).mapToInt(Integer::parseInt).toArray();
    }
}
