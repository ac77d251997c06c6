package dev.underprop.engine.assess;

import dev.underprop.engine.plan.EndNotch;
import dev.underprop.engine.plan.Joist;

/** At which contacts the cut end of a joist is judged: where it ends, and what carries it next to either end. */
final class NotchedEnds {

    private NotchedEnds() {}

    /** Whether a joist ends on a bearing, or may be cut and has no other bearing beyond this one. */
    static boolean at(PlanFrame frame, ContactPlace.OnBearing seat) {
        Joist joist = frame.plan().floor().joists().get(seat.joist());
        return NotchJudge.endsOn(frame.plan().floor().bearings().get(seat.bearing()), joist)
                || mayBeCut(joist) && outermost(frame, seat, false);
    }

    /** Whether a joist may be cut and neither bearing nor shore carries it beyond this shore. */
    static boolean at(PlanFrame frame, ContactPlace.OnShore seat) {
        return mayBeCut(frame.plan().floor().joists().get(seat.joist())) && outermost(frame, seat, true);
    }

    /** What is not stated may be cut, so that it is asked for where the joist reaches past its last support. */
    private static boolean mayBeCut(Joist joist) {
        return !(joist.notch() instanceof EndNotch.Cut cut && cut.depth() == 0);
    }

    private static boolean outermost(PlanFrame frame, ContactPlace seat, boolean shores) {
        double y = y(frame, seat);
        boolean first = true;
        boolean last = true;
        for (ContactPlace other : frame.places()) {
            if (joist(other) == joist(seat) && (shores || other instanceof ContactPlace.OnBearing)) {
                first &= y(frame, other) >= y;
                last &= y(frame, other) <= y;
            }
        }
        return first || last;
    }

    /** Index of the joist, -1 where none is in contact. */
    private static int joist(ContactPlace place) {
        if (place instanceof ContactPlace.OnBearing bearing) {
            return bearing.joist();
        }
        return place instanceof ContactPlace.OnShore shore ? shore.joist() : -1;
    }

    private static double y(PlanFrame frame, ContactPlace place) {
        return place instanceof ContactPlace.OnBearing seat
                ? frame.plan().floor().bearings().get(seat.bearing()).y()
                : frame.plan()
                        .shores()
                        .get(((ContactPlace.OnShore) place).shore())
                        .y();
    }
}
