package dev.underprop.wire.meaning;

import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.engine.plan.SeatGap;
import java.util.List;

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
        List<SeatGap> gaps) {

    boolean under(JoistDraft joist) {
        return joist.crosses(y) && joist.within(from, to);
    }

    Bearing bearing() {
        return new Bearing(name, y, length, stiffness, from, to, fastening, gaps);
    }
}
