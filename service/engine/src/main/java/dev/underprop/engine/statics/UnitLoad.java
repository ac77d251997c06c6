package dev.underprop.engine.statics;

import java.util.List;

/**
 * Loads and changes of clear space that always act together, at full value; a case combines units by factors. Within one
 * contact state the answer to a changed gap is linear, as that to a load is.
 *
 * @param name what it is, for messages
 * @param pieces the loads
 * @param offsets changes of the clear space at contacts, added to the frame's own, which always act once; two at one
 *     contact add up
 */
public record UnitLoad(String name, List<Piece> pieces, List<Offset> offsets) {

    public UnitLoad {
        pieces = List.copyOf(pieces);
        offsets = List.copyOf(offsets);
    }

    /** Loads alone. */
    public UnitLoad(String name, List<Piece> pieces) {
        this(name, pieces, List.of());
    }

    /** Sum of the magnitudes of the loads (N); 0 where only gaps change. */
    public double total() {
        return pieces.stream().mapToDouble(piece -> Math.abs(piece.total())).sum();
    }

    /**
     * A change of the clear space at one contact.
     *
     * @param contact contact number, as in {@link Frame}
     * @param size (m); positive opens, negative closes or lifts
     */
    public record Offset(int contact, double size) {
        public Offset {
            if (contact < 0 || !Double.isFinite(size)) {
                throw new IllegalArgumentException("an offset needs a contact and a finite size");
            }
        }
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
