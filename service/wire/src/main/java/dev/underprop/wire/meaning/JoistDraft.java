package dev.underprop.wire.meaning;

import dev.underprop.engine.plan.EndNotch;
import dev.underprop.engine.plan.Joist;
import dev.underprop.engine.plan.Member;
import java.util.Optional;

/**
 * A joist as far as it was understood; NaN where a quantity was faulty, so that no comparison finds a fault in it again.
 *
 * @param spot where it stands
 * @param name its name
 * @param x centre (m)
 * @param start near end (m)
 * @param length (m)
 * @param member its timber, or nothing after a fault
 * @param notch whether its ends are cut away from below
 */
record JoistDraft(
        Spot spot, String name, double x, double start, double length, Optional<Member> member, EndNotch notch) {

    private static final double ROUNDING = 1e-9;

    double end() {
        return start + length;
    }

    /** Whether it passes over y, its ends included; not when that is not known. */
    boolean crosses(double y) {
        return y >= start - ROUNDING && y <= end() + ROUNDING;
    }

    /** Whether it lies between two x, which may be infinite. */
    boolean within(double from, double to) {
        return x >= from - ROUNDING && x <= to + ROUNDING;
    }

    boolean known() {
        return !Double.isNaN(x + start + length);
    }

    Joist joist() {
        return new Joist(name, x, start, length, member.orElseThrow(), notch);
    }
}
