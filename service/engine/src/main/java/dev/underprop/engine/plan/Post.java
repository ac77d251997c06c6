package dev.underprop.engine.plan;

/**
 * An adjustable post.
 *
 * @param name as the plan calls it, unique in the plan
 * @param x centre (m)
 * @param height floor of the base plate to the beam's underside (m), positive
 * @param stiffness of post, pad and ground in series
 * @param gap clear space over the head before it touches (m), not negative
 * @param lift how far its screw is raised beyond snug (m), not negative
 * @param type its type, or that none is given
 * @param footing the pad it stands on, or that none is given
 */
public record Post(
        String name,
        double x,
        double height,
        Stiffness stiffness,
        double gap,
        double lift,
        Type type,
        Footing footing) {

    public Post {
        Sense.finite(x, "x");
        Sense.positive(height, "height");
        Sense.notNegative(gap, "gap");
        Sense.notNegative(lift, "lift");
    }

    /**
     * What the plan says of the stiffness.
     *
     * @param value (N/m), infinite when rigid
     * @param stated whether the plan states it; rigid is assumed otherwise, and said so
     */
    public record Stiffness(double value, boolean stated) {
        public Stiffness {
            Sense.stiffness(value);
        }
    }

    /** The type a plan gives a post. */
    public sealed interface Type permits NoType, PostType {}

    /** No type named. */
    public record NoType() implements Type {}

    /** What a post stands on. */
    public sealed interface Footing permits NoPad, Pad {}

    /** No pad named. */
    public record NoPad() implements Footing {}
}
