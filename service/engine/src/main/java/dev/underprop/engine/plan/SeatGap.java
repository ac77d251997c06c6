package dev.underprop.engine.plan;

import java.util.List;

/**
 * Clear space under one joist at a seat.
 *
 * @param joist index of the joist in the floor
 * @param gap (m), not negative
 */
public record SeatGap(int joist, double gap) {

    public SeatGap {
        Sense.notNegative(gap, "gap");
    }

    static double of(List<SeatGap> gaps, int joist) {
        return gaps.stream()
                .filter(g -> g.joist == joist)
                .mapToDouble(SeatGap::gap)
                .findFirst()
                .orElse(0);
    }
}
