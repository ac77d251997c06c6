package dev.underprop.wire.meaning;

import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.Seat;
import dev.underprop.engine.plan.SeatGap;
import java.util.List;
import java.util.Optional;

/** A bearing as far as it was understood; NaN where a quantity was faulty. */
record BearingDraft(
        Spot spot,
        String name,
        double y,
        double length,
        double stiffness,
        double from,
        double to,
        Fastening fastening,
        List<SeatGap> gaps,
        Optional<GirderDraft> girder,
        Seat seat) {

    BearingDraft withGaps(List<SeatGap> its) {
        return new BearingDraft(spot, name, y, length, stiffness, from, to, fastening, its, girder, seat);
    }

    boolean under(JoistDraft joist) {
        return joist.crosses(y) && joist.within(from, to);
    }

    /** Whether it is known where it lies. */
    boolean placed() {
        return !Double.isNaN(y) && to > from;
    }

    Bearing bearing() {
        Bearing.Body body = girder.<Bearing.Body>map(GirderDraft::girder).orElseGet(Bearing.Line::new);
        return new Bearing(name, y, length, stiffness, from, to, fastening, gaps, body, seat);
    }
}
