package dev.underprop.engine.plan;

import java.util.List;

/**
 * One shore: a beam across the joists and the posts under it.
 *
 * @param name as the plan calls it
 * @param y where it stands (m)
 * @param beam plies and timber
 * @param start x of the beam's left end (m)
 * @param length of the beam (m), positive
 * @param gaps joists that stand clear of the beam
 * @param posts in order of x
 * @param bracing what holds beam and heads sideways and upright
 * @param assembly how the beam is put together from its plies
 */
public record Shore(
        String name,
        double y,
        Member beam,
        double start,
        double length,
        List<SeatGap> gaps,
        List<Post> posts,
        Bracing bracing,
        Assembly assembly) {

    /** A shore of the plies of whose beam nothing more is said. */
    public Shore(
            String name,
            double y,
            Member beam,
            double start,
            double length,
            List<SeatGap> gaps,
            List<Post> posts,
            Bracing bracing) {
        this(name, y, beam, start, length, gaps, posts, bracing, Assembly.UNDECLARED);
    }

    /** A shore of whose bracing nothing is said. */
    public Shore(
            String name, double y, Member beam, double start, double length, List<SeatGap> gaps, List<Post> posts) {
        this(name, y, beam, start, length, gaps, posts, Bracing.UNDECLARED);
    }

    /**
     * What holds a shore sideways and upright.
     *
     * @param heads what holds the heads of its posts sideways
     * @param roll what holds the beam against rolling over at its posts
     */
    public record Bracing(Restraint.Sides heads, Restraint roll) {
        /** Nothing is said. */
        public static final Bracing UNDECLARED = new Bracing(Restraint.Sides.UNDECLARED, new Restraint.Undeclared());
    }

    public Shore {
        Sense.finite(y, "y");
        Sense.finite(start, "start");
        Sense.positive(length, "length");
        gaps = List.copyOf(gaps);
        posts = List.copyOf(posts);
        if (posts.isEmpty()) {
            throw new IllegalArgumentException("a shore needs at least one post");
        }
    }

    /** The same beam on other posts. */
    public Shore with(List<Post> others) {
        return new Shore(name, y, beam, start, length, gaps, others, bracing, assembly);
    }

    /** x of the beam's right end (m). */
    public double end() {
        return start + length;
    }

    /** Whether the joist crosses the beam. */
    public boolean under(Joist joist) {
        return joist.crosses(y) && joist.x() >= start - Sense.ROUNDING && joist.x() <= end() + Sense.ROUNDING;
    }

    /** Clear space (m) between a joist and the beam. */
    public double gapUnder(int joist) {
        return SeatGap.of(gaps, joist);
    }
}
