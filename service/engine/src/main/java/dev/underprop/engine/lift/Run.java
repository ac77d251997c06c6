package dev.underprop.engine.lift;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** One way through a lift, with some limits perhaps set aside, until it is done or stopped. */
final class Run {

    private final LiftFloor floor;
    private final Gauges gauges;
    private final Watch watch;
    private final Verdicts verdicts;
    private final Stager stager;
    private final Stages stages;
    private final Screws screws;
    private Course course;
    private Course held;
    private Optional<Stager.Refusal> afterStage = Optional.empty();
    private int[] left = {};
    private int[] toGo = {};
    private boolean caughtUp;
    private boolean givenUp;
    private int attempted;

    /**
     * Where a run begins.
     *
     * @param floor with its bounds
     * @param gauges that read its limits
     * @param course how things stand
     * @param turned how far each screw is raised (m)
     * @param down whether posts are let down
     */
    record Start(LiftFloor floor, Gauges gauges, Course course, double[] turned, boolean down) {

        static Start of(LiftFloor floor, Gauges gauges, double[] raised, double[] turned, boolean down) {
            Course course = Course.of(floor, gauges, raised, down);
            return new Start(floor, gauges, new Watch(floor, gauges, down).turned(course), turned, down);
        }
    }

    Run(Start start, LiftRequest request, Levels levels, BitSet aside) {
        this.floor = start.floor();
        this.gauges = start.gauges();
        this.watch = new Watch(floor, gauges, start.down());
        this.screws = new Screws(request.screws(), request.limits());
        this.verdicts = new Verdicts(gauges.limits(), aside);
        Turnable turnable = new Turnable(floor, request.order());
        this.stager = new Stager(floor, gauges, watch, verdicts, turnable, screws, start.down());
        this.stages = new Stages(
                floor,
                verdicts,
                screws,
                levels,
                request.limits(),
                start.turned().clone(),
                start.down());
        this.course = start.course();
        this.held = watch.held(course);
    }

    /**
     * Goes as far as it can.
     *
     * @param first smallest turns that make up for what has sunk, by post
     * @param steps smallest turns to be made in all, those among them
     */
    void go(int[] first, int[] steps) {
        int[] rest = steps.clone();
        for (int p = 0; p < rest.length; p++) {
            rest[p] -= first[p];
            caughtUp |= first[p] > 0;
        }
        toGo = steps.clone();
        left = new int[steps.length];
        evenly(first);
        evenly(rest);
    }

    /** Every post in every stage by the same share of its steps. */
    private void evenly(int[] steps) {
        int count = stages(steps);
        for (int k = 1; k <= count && !stopped(); k++) {
            int[] now = new int[steps.length];
            double[] metres = new double[steps.length];
            for (int p = 0; p < now.length; p++) {
                now[p] = Stager.share(steps[p], k, count) - Stager.share(steps[p], k - 1, count);
                metres[p] = toGo[p] * screws.step(p);
            }
            attempted++;
            Stager.Made made = stager.make(course, now, metres);
            if (!made.passes().isEmpty() && !holds(made)) {
                return;
            }
            course = made.end();
            left = made.left();
            givenUp = stopped() && floor.spent();
            for (int p = 0; p < now.length; p++) {
                toGo[p] -= now[p] - left[p];
            }
            if (!made.passes().isEmpty()) {
                stages.add(made, held);
            }
        }
    }

    /** Whether the floor may be left as a stage leaves it, under every pattern of live load. */
    private boolean holds(Stager.Made made) {
        Course after = watch.held(made.end());
        int limit = after.stands() ? verdicts.refusing(held, after) : -1;
        if (!after.stands() || limit >= 0) {
            List<Stager.Made.Turned> pass = made.passes().get(made.passes().size() - 1);
            afterStage =
                    Optional.of(new Stager.Refusal(pass.get(pass.size() - 1).post(), after, limit));
            return false;
        }
        verdicts.note(after);
        held = after;
        return true;
    }

    /** Stages begun, the one in which it stopped among them. */
    int attempted() {
        return attempted;
    }

    /** Whether what had sunk was made up for first. */
    boolean caughtUp() {
        return caughtUp;
    }

    /** Stages that the limit per stage asks for. */
    int stages(int[] steps) {
        int count = 0;
        for (int p = 0; p < steps.length; p++) {
            if (steps[p] > 0) {
                int most = screws.inStage(p);
                count = Math.max(count, (steps[p] + most - 1) / most);
            }
        }
        return count;
    }

    /** Whether the search was given up before a limit had stopped it. */
    boolean givenUp() {
        return givenUp;
    }

    boolean stopped() {
        if (afterStage.isPresent()) {
            return true;
        }
        for (int one : left) {
            if (one != 0) {
                return true;
            }
        }
        return false;
    }

    /** The turn that came nearest to being possible where it stopped, or the stage that must not be left so. */
    Stager.Refusal refusal() {
        return afterStage.orElseGet(() -> stager.nearest(course, left));
    }

    /** Whether it is a stage, once it is done, that must not be left so. */
    boolean stoppedAfterStage() {
        return afterStage.isPresent();
    }

    Course course() {
        return course;
    }

    /** How things stand at the end under every pattern of live load. */
    Course held() {
        return held;
    }

    List<LiftPlan.Stage> made() {
        return stages.made();
    }

    Verdicts verdicts() {
        return verdicts;
    }

    LiftFloor floor() {
        return floor;
    }

    Gauges gauges() {
        return gauges;
    }
}
