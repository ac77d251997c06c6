package dev.underprop.engine.plan;

/**
 * A post of timber, standing on end from plate to plate: breadth and plies along the shore beam, depth across it.
 *
 * @param member section, timber, moisture and treatment; its weight is not used
 * @param eccentricity how far off the middle the load may act at both ends, in any direction (m), not negative
 * @param construction whether the plan states that it stands during construction only
 * @param joined what joins its plies
 */
public record TimberPost(Member member, double eccentricity, boolean construction, Joined joined)
        implements PostType.Shaft {

    public TimberPost {
        Sense.notNegative(eccentricity, "eccentricity");
    }

    /** What joins the plies of a post. */
    public sealed interface Joined {}

    /** Nothing that is declared. */
    public record Unjoined() implements Joined {}

    /**
     * Nails or bolts through all plies, which run in one length from plate to plate.
     *
     * @param bolts whether bolts; nails otherwise
     * @param diameter of one (m), positive
     * @param length of nails (m), positive; NaN for bolts
     * @param end from the ends of the post to the nearest (m), positive
     * @param spacing between neighbours in a row (m), positive
     * @param rows along the post, at least 1
     * @param between rows (m), positive; NaN for one row
     * @param edge from the edge of the plies to the nearest row (m), positive
     * @param detailed nails: stated that neighbours are driven from opposite faces; bolts: washers under head and nut, and
     *     tightened
     */
    public record Fasteners(
            boolean bolts,
            double diameter,
            double length,
            double end,
            double spacing,
            int rows,
            double between,
            double edge,
            boolean detailed)
            implements Joined {
        public Fasteners {
            Sense.positive(diameter, "diameter");
            if (rows < 1) {
                throw new IllegalArgumentException("fasteners stand in at least one row");
            }
        }
    }
}
