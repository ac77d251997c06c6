package dev.underprop.engine.plan;

import java.util.List;

/**
 * A girder under the joists: a beam along x on piers of its own.
 *
 * @param member plies and timber
 * @param start x of its left end (m)
 * @param length (m), positive
 * @param piers in order of x, at least one
 */
public record Girder(Member member, double start, double length, List<Pier> piers) implements Bearing.Body {

    public Girder {
        Sense.finite(start, "start");
        Sense.positive(length, "length");
        piers = List.copyOf(piers);
        if (piers.isEmpty()) {
            throw new IllegalArgumentException("a girder needs a pier");
        }
    }

    /** x of its right end (m). */
    public double end() {
        return start + length;
    }

    /**
     * What a girder stands on.
     *
     * @param name as the plan calls it, unique among bearings and piers
     * @param x centre (m)
     * @param length size of the seat along the girder (m), positive
     * @param stiffness (N/m), infinite when rigid by explicit statement
     * @param fastening what holds the girder down on it
     * @param seat what the girder sits on or hangs in there
     */
    public record Pier(String name, double x, double length, double stiffness, Fastening fastening, Seat seat) {

        /** A pier of whose seat nothing is said. */
        public Pier(String name, double x, double length, double stiffness, Fastening fastening) {
            this(name, x, length, stiffness, fastening, new Seat.Undeclared());
        }

        public Pier {
            Sense.finite(x, "x");
            Sense.positive(length, "length");
            Sense.stiffness(stiffness);
        }
    }
}
