package dev.underprop.engine.lift;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Which turns are refused and by what, with limits that may be set aside to see what a change of them would bring. */
final class Verdicts {

    /** Parts used that differ by less are equal. */
    private static final double TIE = 1e-8;

    /** Parts used that differ by less differ by rounding. */
    private static final double ROUNDING = 1e-9;

    private final List<Limit> limits;
    private final BitSet aside;
    private final double[] greatest;

    Verdicts(List<Limit> limits, BitSet aside) {
        this.limits = limits;
        this.aside = aside;
        this.greatest = new double[limits.size()];
    }

    Limit limit(int index) {
        return limits.get(index);
    }

    /** Index of the limit that refuses a turn, the one most exceeded; -1 where none does. */
    int refusing(Course before, Course after) {
        int worst = -1;
        for (int i = 0; i < limits.size(); i++) {
            double now = after.values()[i];
            if (!aside.get(i) && limits.get(i).refuses(before.values()[i], now)) {
                worst = worst < 0 || more(used(after, i), used(after, worst)) ? i : worst;
            }
        }
        return worst;
    }

    private double used(Course course, int limit) {
        return limits.get(limit).used(course.values()[limit]);
    }

    /** How much of each limit is used, most first: the shorter of two in this order leaves more in hand. */
    double[] used(Course course) {
        double[] used = new double[limits.size()];
        for (int i = 0; i < used.length; i++) {
            used[i] = Double.isNaN(course.values()[i]) ? 0 : -used(course, i);
        }
        Arrays.sort(used);
        return used;
    }

    /** Whether one leaves more in hand than another, by more than rounding. */
    static boolean better(double[] one, double[] other) {
        for (int i = 0; i < one.length; i++) {
            double close = TIE * Math.max(1, Math.abs(other[i]));
            if (Math.abs(one[i] - other[i]) > close) {
                return one[i] > other[i];
            }
        }
        return false;
    }

    /** The one of which more is used; of equals the first, however rounding falls. */
    static LiftPlan.Running worse(LiftPlan.Running first, LiftPlan.Running other) {
        return more(other.used(), first.used()) ? other : first;
    }

    /** Whether a part used is greater by more than rounding. */
    static boolean more(double used, double than) {
        return used > than && !(used - than <= ROUNDING * Math.max(1, than));
    }

    /** Notes what a turn that is made brings. */
    void note(Course course) {
        for (int i = 0; i < greatest.length; i++) {
            greatest[i] = Math.max(greatest[i], course.values()[i]);
        }
    }

    /** Greatest value of a limit after any turn that was noted. */
    double greatest(int limit) {
        return greatest[limit];
    }

    /** The limit of each kind of which most is used. */
    List<LiftPlan.Running> governing(Course course) {
        Map<Limit.Kind, LiftPlan.Running> by = new EnumMap<>(Limit.Kind.class);
        for (int i = 0; i < limits.size(); i++) {
            double value = course.values()[i];
            if (!Double.isNaN(value)) {
                LiftPlan.Running one = new LiftPlan.Running(limits.get(i), value, used(course, i));
                by.merge(limits.get(i).kind(), one, Verdicts::worse);
            }
        }
        return new ArrayList<>(by.values());
    }

    /** Limits that a course breaks. */
    List<LiftPlan.Running> broken(Course course) {
        List<LiftPlan.Running> broken = new ArrayList<>();
        for (int i = 0; i < limits.size(); i++) {
            if (limits.get(i).broken(course.values()[i])) {
                broken.add(new LiftPlan.Running(limits.get(i), course.values()[i], used(course, i)));
            }
        }
        return broken;
    }
}
