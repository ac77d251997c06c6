package dev.underprop.engine.assess;

import dev.underprop.engine.statics.Solution;
import java.util.BitSet;

/**
 * Tells a member that rocks from one that tips. A joist lifted at mid-span by a beam under it, or a beam that lies on a post a
 * little too high, is in balance on one support; it moves freely only until it comes to rest on the supports at either side.
 */
final class Rocking {

    private final PlanFrame frame;

    Rocking(PlanFrame frame) {
        this.frame = frame;
    }

    /** Whether whatever is loose in a case is in balance, with something at either side that stops it. */
    boolean only(Solution solution) {
        BitSet loose = solution.loose();
        return solution.balanced() && !loose.isEmpty() && loose.stream().allMatch(m -> stopped(m, solution));
    }

    private boolean stopped(int member, Solution solution) {
        double first = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        for (int c = 0; c < frame.contacts(); c++) {
            if (frame.held(c) == member && solution.closed(c)) {
                first = Math.min(first, frame.at(c));
                last = Math.max(last, frame.at(c));
            }
        }
        boolean before = false;
        boolean beyond = false;
        for (int c = 0; c < frame.contacts(); c++) {
            if (frame.held(c) == member && !solution.closed(c) && !solution.absent(c)) {
                before |= frame.at(c) < first;
                beyond |= frame.at(c) > last;
            }
        }
        return first <= last && before && beyond;
    }
}
