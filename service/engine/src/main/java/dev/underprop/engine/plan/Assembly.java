package dev.underprop.engine.plan;

import java.util.List;

/**
 * How a beam is put together from its plies.
 *
 * @param nailing what joins the plies to each other
 * @param joints where plies are pieced
 */
public record Assembly(Nailing nailing, Joints joints) {

    /** Nothing is said. */
    public static final Assembly UNDECLARED = new Assembly(new NoNailing(), new JointsUndeclared());

    /** What joins the plies to each other. */
    public sealed interface Nailing {}

    /** Nothing is said. */
    public record NoNailing() implements Nailing {}

    /**
     * Nails through the faces of the plies.
     *
     * @param diameter of the shank (m), positive
     * @param length (m), positive
     * @param rows along the beam, at least 1
     * @param spacing of nails in one row (m), positive
     * @param staggered whether nails of one row stand between those of the next
     * @param bothFaces whether they are driven from both faces by turns
     * @param everyPly whether every ply is nailed so to the next
     * @param atEnds nails at every end of a ply, at joints as well, not negative
     */
    public record Nails(
            double diameter,
            double length,
            int rows,
            double spacing,
            boolean staggered,
            boolean bothFaces,
            boolean everyPly,
            int atEnds)
            implements Nailing {
        public Nails {
            Sense.positive(diameter, "nail diameter");
            Sense.positive(length, "nail length");
            Sense.positive(spacing, "nail spacing");
            if (rows < 1 || atEnds < 0) {
                throw new IllegalArgumentException("there must be a row of nails, and no fewer than none at the ends");
            }
        }
    }

    /** Where plies are pieced. */
    public sealed interface Joints {}

    /** Nothing is said. */
    public record JointsUndeclared() implements Joints {}

    /**
     * All joints there are.
     *
     * @param all in any order; none when every ply runs through
     */
    public record JointsAt(List<Joint> all) implements Joints {
        public JointsAt {
            all = List.copyOf(all);
        }

        /** How many plies are pieced anywhere. */
        public int pieced() {
            return (int) all.stream().mapToInt(Joint::ply).distinct().count();
        }
    }

    /**
     * Two pieces of one ply that meet.
     *
     * @param ply number of the ply, from 1
     * @param x where they meet (m)
     */
    public record Joint(int ply, double x) {
        public Joint {
            Sense.finite(x, "x of a joint");
            if (ply < 1) {
                throw new IllegalArgumentException("plies are numbered from 1");
            }
        }
    }
}
