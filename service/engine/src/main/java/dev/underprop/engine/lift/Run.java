package dev.underprop.engine.lift;

import java.util.BitSet;
import java.util.List;

/** One way through a lift, with some limits perhaps set aside, until it is done or stopped. */
final class Run {

    private final LiftFloor floor;
    private final Gauges gauges;
    private final Verdicts verdicts;
    private final Stager stager;
    private final Stages stages;
    private final Screws screws;
    private Course course;
    private int[] left = {};
    private int[] toGo = {};
    private boolean caughtUp;
    private int attempted;
    private String lifts = "";

    Run(LiftFloor floor, Gauges gauges, LiftRequest request, Levels levels, Begun begun, BitSet aside) {
        this(
                floor,
                gauges,
                request,
                levels,
                Course.of(floor, gauges, begun.raised(), false),
                begun.turned(),
                aside,
                false);
    }

    Run(
            LiftFloor floor,
            Gauges gauges,
            LiftRequest request,
            Levels levels,
            Course start,
            double[] turned,
            BitSet aside,
            boolean down) {
        this.floor = floor;
        this.gauges = gauges;
        this.screws = new Screws(request.screws(), request.limits());
        this.verdicts = new Verdicts(gauges.limits(), aside);
        Turnable turnable = new Turnable(floor, request.order());
        this.stager = new Stager(floor, gauges, verdicts, turnable, screws, down);
        this.stages = new Stages(floor, verdicts, screws, levels, request.limits(), turned.clone(), down);
        this.course = start;
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
            lifts = floor.lifts(made.end());
            if (!lifts.isEmpty()) {
                return;
            }
            course = made.end();
            left = made.left();
            for (int p = 0; p < now.length; p++) {
                toGo[p] -= now[p] - left[p];
            }
            if (!made.passes().isEmpty()) {
                stages.add(made);
            }
        }
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
            int most = Math.max(1, screws.inStage(p));
            count = Math.max(count, (steps[p] + most - 1) / most);
        }
        return count;
    }

    /** What would move after the stage in which it stopped if only part of dead load held, in words; empty where nothing would. */
    String lifts() {
        return lifts;
    }

    boolean stopped() {
        if (!lifts.isEmpty()) {
            return true;
        }
        for (int one : left) {
            if (one != 0) {
                return true;
            }
        }
        return false;
    }

    /** The turn that came nearest to being possible where it stopped. */
    Stager.Refusal refusal() {
        return stager.nearest(course, left);
    }

    Course course() {
        return course;
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
