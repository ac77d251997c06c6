package dev.underprop.engine.assess;

import dev.underprop.engine.statics.CaseGroup;
import dev.underprop.engine.statics.Rules;
import dev.underprop.engine.statics.Solution;
import java.util.BitSet;
import java.util.function.IntPredicate;

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
        return solution.balanced()
                && !loose.isEmpty()
                && loose.stream().allMatch(m -> stopped(m, solution::closed, solution::absent));
    }

    /**
     * The same for cases that ended in one contact state, something being loose in it.
     *
     * @param rules by which they were solved
     */
    boolean only(CaseGroup group, Rules rules) {
        BitSet absent = rules.absent();
        return group.loose().stream().allMatch(m -> stopped(m, group::closed, absent::get));
    }

    private boolean stopped(int member, IntPredicate closed, IntPredicate absent) {
        double first = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        for (int c = 0; c < frame.contacts(); c++) {
            if (frame.held(c) == member && closed.test(c)) {
                first = Math.min(first, frame.at(c));
                last = Math.max(last, frame.at(c));
            }
        }
        boolean before = false;
        boolean beyond = false;
        for (int c = 0; c < frame.contacts(); c++) {
            if (frame.held(c) == member && !closed.test(c) && !absent.test(c)) {
                before |= frame.at(c) < first;
                beyond |= frame.at(c) > last;
            }
        }
        return first <= last && before && beyond;
    }
}
