package dev.underprop.engine.statics;

import java.util.List;

/**
 * Loads that always act together, at full value; a case combines unit loads by factors.
 *
 * @param name what it is, for messages
 * @param pieces the loads
 */
public record UnitLoad(String name, List<Piece> pieces) {

    public UnitLoad {
        pieces = List.copyOf(pieces);
    }

    /** One load on one member; members are numbered as in {@link Frame}. */
    public sealed interface Piece {
        int member();

        /** Total force (N), downward positive. */
        double total();
    }

    /**
     * A uniform load over part of a member.
     *
     * @param member member number
     * @param from near end of the loaded part (m), member coordinate
     * @param to far end (m), greater than from
     * @param intensity (N/m), downward positive
     */
    public record Uniform(int member, double from, double to, double intensity) implements Piece {
        public Uniform {
            if (!(to > from) || !Double.isFinite(intensity) || !Double.isFinite(to - from)) {
                throw new IllegalArgumentException("a uniform load needs a positive length and a finite intensity");
            }
        }

        @Override
        public double total() {
            return intensity * (to - from);
        }
    }

    /**
     * A force at one place of a member.
     *
     * @param member member number
     * @param at place (m), member coordinate
     * @param force (N), downward positive
     */
    public record Point(int member, double at, double force) implements Piece {
        public Point {
            if (!Double.isFinite(at) || !Double.isFinite(force)) {
                throw new IllegalArgumentException("a point load needs a finite place and force");
            }
        }

        @Override
        public double total() {
            return force;
        }
    }
}
