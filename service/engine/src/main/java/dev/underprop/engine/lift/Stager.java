package dev.underprop.engine.lift;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the turns of one stage: as few passes through the posts as every limit allows, each post by the same share of what it
 * has to go in a pass. A turn that is refused waits until others have been made. Where even single smallest turns in even
 * passes do not go, any post that can is turned by one.
 */
final class Stager {

    /** A turn leaves more in hand only where it does so by more than rounding. */
    private static final double TIE = 1e-9;

    private final LiftFloor floor;
    private final Gauges gauges;
    private final Watch watch;
    private final Verdicts verdicts;
    private final Turnable turnable;
    private final Screws screws;
    private final boolean down;

    Stager(
            LiftFloor floor,
            Gauges gauges,
            Watch watch,
            Verdicts verdicts,
            Turnable turnable,
            Screws screws,
            boolean down) {
        this.floor = floor;
        this.gauges = gauges;
        this.watch = watch;
        this.verdicts = verdicts;
        this.turnable = turnable;
        this.screws = screws;
        this.down = down;
    }

    /**
     * What was made of a stage.
     *
     * @param end how things stand then
     * @param passes turns made
     * @param left smallest turns not made, by post
     */
    record Made(Course end, List<List<Made.Turned>> passes, int[] left) {

        /** One turn. */
        record Turned(int post, int steps, Course before, Course after) {}

        boolean done() {
            for (int one : left) {
                if (one != 0) {
                    return false;
                }
            }
            return true;
        }
    }

    /** A turn that was tried and is refused. */
    record Refusal(int post, Course after, int limit) {}

    /**
     * Turns posts from a course.
     *
     * @param steps smallest turns to be made in this stage, by post
     * @param toGo what each post has to go in the whole lift (m)
     */
    Made make(Course from, int[] steps, double[] toGo) {
        int most = 0;
        int least = 1;
        for (int p = 0; p < steps.length; p++) {
            most = Math.max(most, steps[p]);
            if (steps[p] > 0) {
                int atOnce = screws.atOnce(p);
                least = Math.max(least, (steps[p] + atOnce - 1) / atOnce);
            }
        }
        for (int passes = least; passes <= most && !floor.spent(); passes++) {
            Made made = even(from, steps, toGo, passes);
            if (made.done()) {
                return made;
            }
        }
        return singly(from, steps, toGo);
    }

    private Made even(Course from, int[] steps, double[] toGo, int passes) {
        Course course = from;
        int[] left = steps.clone();
        List<List<Made.Turned>> made = new ArrayList<>();
        for (int pass = 1; pass <= passes; pass++) {
            int[] now = new int[steps.length];
            for (int p = 0; p < now.length; p++) {
                now[p] = share(steps[p], pass, passes) - share(steps[p], pass - 1, passes);
            }
            List<Made.Turned> turns = pass(course, now, toGo);
            if (!turns.isEmpty()) {
                made.add(turns);
                course = turns.get(turns.size() - 1).after();
            }
            for (Made.Turned turn : turns) {
                left[turn.post()] -= turn.steps();
                now[turn.post()] -= turn.steps();
            }
            if (java.util.Arrays.stream(now).anyMatch(n -> n != 0)) {
                return new Made(course, made, left);
            }
        }
        return new Made(course, made, left);
    }

    /** Halves go up, so that what stands in a mirror gets the same. */
    static int share(int whole, int part, int parts) {
        return (int) ((2L * whole * part + parts) / (2L * parts));
    }

    private Made singly(Course from, int[] steps, double[] toGo) {
        Course course = from;
        int[] left = steps.clone();
        List<List<Made.Turned>> made = new ArrayList<>();
        while (true) {
            int[] now = new int[steps.length];
            for (int p = 0; p < now.length; p++) {
                now[p] = Math.min(1, left[p]);
            }
            List<Made.Turned> turns = pass(course, now, toGo);
            if (turns.isEmpty() || floor.spent()) {
                return new Made(course, made, left);
            }
            made.add(turns);
            course = turns.get(turns.size() - 1).after();
            for (Made.Turned turn : turns) {
                left[turn.post()] -= turn.steps();
            }
        }
    }

    /** One pass, as far as it goes. */
    private List<Made.Turned> pass(Course from, int[] steps, double[] toGo) {
        List<Integer> pending = new ArrayList<>();
        for (int p = 0; p < steps.length; p++) {
            if (steps[p] > 0) {
                pending.add(p);
            }
        }
        List<Made.Turned> turns = new ArrayList<>();
        Course course = from;
        boolean progress = true;
        while (progress && !pending.isEmpty() && !floor.spent()) {
            progress = false;
            for (List<Integer> group : turnable.groups(pending, toGo)) {
                List<Integer> tied = new ArrayList<>(group);
                while (!tied.isEmpty()) {
                    Optional<Made.Turned> found = best(course, tied, steps);
                    if (found.isEmpty()) {
                        break;
                    }
                    Made.Turned turn = found.get();
                    turns.add(turn);
                    verdicts.note(turn.after());
                    course = turn.after();
                    tied.remove((Integer) turn.post());
                    pending.remove((Integer) turn.post());
                    progress = true;
                }
            }
        }
        return turns;
    }

    /** The turn of tied posts that leaves most in hand; empty where none of them may be turned. */
    private Optional<Made.Turned> best(Course course, List<Integer> tied, int[] steps) {
        List<Made.Turned> allowed = new ArrayList<>();
        for (int p : tied) {
            Course after = turned(course, p, steps[p]);
            if (after.stands() && verdicts.refusing(course, after) < 0) {
                allowed.add(new Made.Turned(p, steps[p], course, after));
            }
        }
        while (!allowed.isEmpty()) {
            Made.Turned best = mostInHand(allowed);
            Course after = watch.turned(best.after());
            if (after.stands() && verdicts.refusing(course, after) < 0) {
                return Optional.of(new Made.Turned(best.post(), best.steps(), course, after));
            }
            allowed.remove(best);
        }
        return Optional.empty();
    }

    private Made.Turned mostInHand(List<Made.Turned> turns) {
        Made.Turned best = turns.get(0);
        double[] least = verdicts.used(best.after());
        for (Made.Turned turn : turns.subList(1, turns.size())) {
            double[] used = verdicts.used(turn.after());
            if (Verdicts.better(used, least)) {
                best = turn;
                least = used;
            }
        }
        return best;
    }

    private Course turned(Course course, int post, int steps) {
        double by = steps * screws.step(post);
        return course.turned(floor, gauges, post, down ? -by : by);
    }

    /** Of all smallest turns that could come next, the one least refused. */
    Refusal nearest(Course course, int[] left) {
        Refusal nearest = new Refusal(-1, course, -1);
        double least = Double.POSITIVE_INFINITY;
        for (int p = 0; p < left.length; p++) {
            if (left[p] > 0) {
                Course after = watch.turned(turned(course, p, 1));
                int limit = after.stands() ? verdicts.refusing(course, after) : -1;
                double over = limit < 0
                        ? Double.MAX_VALUE
                        : gauges.limits().get(limit).used(after.values()[limit]);
                if (nearest.post() < 0 || over < least * (1 - TIE)) {
                    nearest = new Refusal(p, after, limit);
                    least = over;
                }
            }
        }
        return nearest;
    }
}
