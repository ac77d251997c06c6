package dev.underprop.engine.lift;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** In which order posts are tried. The keys are the same seen in a mirror; what ties is decided by what a turn brings. */
final class Turnable {

    /** Lengths nearer than this are equal (m). */
    private static final double SAME = 1e-6;

    private final LiftRequest.Order order;
    private final double[] offMiddle;

    Turnable(LiftFloor floor, LiftRequest.Order order) {
        this.order = order;
        List<LiftFloor.Head> heads = floor.heads();
        this.offMiddle = new double[heads.size()];
        for (int p = 0; p < offMiddle.length; p++) {
            double from = Double.POSITIVE_INFINITY;
            double to = Double.NEGATIVE_INFINITY;
            for (LiftFloor.Head other : heads) {
                if (other.place().shore() == heads.get(p).place().shore()) {
                    from = Math.min(from, other.x());
                    to = Math.max(to, other.x());
                }
            }
            offMiddle[p] = Math.abs(heads.get(p).x() - (from + to) / 2);
        }
    }

    private record Keyed(int post, long first, long second) {}

    /**
     * Groups of posts that tie, in order.
     *
     * @param pending posts to be turned
     * @param toGo by post (m)
     */
    List<List<Integer>> groups(List<Integer> pending, double[] toGo) {
        List<Keyed> keyed = new ArrayList<>();
        for (int p : pending) {
            long middle = units(offMiddle[p]);
            keyed.add(
                    switch (order) {
                        case MOST_TO_GO_FIRST -> new Keyed(p, -units(Math.abs(toGo[p])), middle);
                        case MIDDLE_OUTWARD -> new Keyed(p, middle, 0);
                        case ENDS_INWARD -> new Keyed(p, -middle, 0);
                    });
        }
        keyed.sort(Comparator.comparingLong(Keyed::first)
                .thenComparingLong(Keyed::second)
                .thenComparingInt(Keyed::post));
        List<List<Integer>> groups = new ArrayList<>();
        for (int i = 0; i < keyed.size(); i++) {
            Keyed one = keyed.get(i);
            boolean ties = i > 0
                    && keyed.get(i - 1).first() == one.first()
                    && keyed.get(i - 1).second() == one.second();
            if (!ties) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(one.post());
        }
        return groups;
    }

    private static long units(double length) {
        return StrictMath.round(length / SAME);
    }
}
