package dev.underprop.engine.plan;

import java.util.List;

/**
 * A line along x that joists rest on: sill, wall, girder.
 *
 * @param name as the plan calls it
 * @param y centre line (m)
 * @param length bearing length along the joist (m), positive
 * @param stiffness under each joist (N/m), infinite when rigid by explicit statement
 * @param from x where it begins (m), may be minus infinity
 * @param to x where it ends (m), may be plus infinity
 * @param fastening what holds the joists down on it
 * @param gaps joists that stand clear of it
 * @param body what it is made of: a line that stands on the ground, or a girder on piers
 * @param seat what each joist sits on or hangs in there
 */
public record Bearing(
        String name,
        double y,
        double length,
        double stiffness,
        double from,
        double to,
        Fastening fastening,
        List<SeatGap> gaps,
        Body body,
        Seat seat) {

    /** What a bearing is made of. */
    public sealed interface Body permits Line, Girder {}

    /** A sill or wall that stands on the ground all along. */
    public record Line() implements Body {}

    /** A sill or wall. */
    public Bearing(
            String name,
            double y,
            double length,
            double stiffness,
            double from,
            double to,
            Fastening fastening,
            List<SeatGap> gaps) {
        this(name, y, length, stiffness, from, to, fastening, gaps, new Line());
    }

    /** A bearing of whose seats nothing is said. */
    public Bearing(
            String name,
            double y,
            double length,
            double stiffness,
            double from,
            double to,
            Fastening fastening,
            List<SeatGap> gaps,
            Body body) {
        this(name, y, length, stiffness, from, to, fastening, gaps, body, new Seat.Undeclared());
    }

    public Bearing {
        Sense.finite(y, "y");
        Sense.positive(length, "length");
        Sense.stiffness(stiffness);
        if (!(to > from)) {
            throw new IllegalArgumentException("a bearing must end after it begins");
        }
        gaps = List.copyOf(gaps);
    }

    /** Whether the joist lies over this bearing. */
    public boolean under(Joist joist) {
        return joist.crosses(y) && joist.x() >= from - Sense.ROUNDING && joist.x() <= to + Sense.ROUNDING;
    }

    /** Clear space (m) under a joist before it touches. */
    public double gapUnder(int joist) {
        return SeatGap.of(gaps, joist);
    }
}
