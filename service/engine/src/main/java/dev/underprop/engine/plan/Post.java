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
 * @param ends what holds its head and foot in place
 */
public record Post(
        String name,
        double x,
        double height,
        Stiffness stiffness,
        double gap,
        double lift,
        Type type,
        Footing footing,
        Ends ends) {

    /** A post of whose ends nothing is said. */
    public Post(
            String name,
            double x,
            double height,
            Stiffness stiffness,
            double gap,
            double lift,
            Type type,
            Footing footing) {
        this(name, x, height, stiffness, gap, lift, type, footing, Ends.UNDECLARED);
    }

    /**
     * What holds a post in place at its ends.
     *
     * @param head to the beam
     * @param foot to the pad
     */
    public record Ends(End head, End foot) {
        /** Nothing is said. */
        public static final Ends UNDECLARED = new Ends(new Undeclared(), new Undeclared());

        /** Whether a post without load stays where it is. */
        public boolean fastened() {
            return head instanceof Fastened && foot instanceof Fastened;
        }
    }

    /** One end of a post. */
    public sealed interface End {}

    /** Nothing is said. */
    public record Undeclared() implements End {}

    /** Held by nothing but the load on it. */
    public record Unfastened() implements End {}

    /**
     * Fastened.
     *
     * @param by what fastens it
     * @param sideways allowable sideways force (N), NaN where not stated
     * @param screws lag screws through the plate, or that none are described
     */
    public record Fastened(String by, double sideways, Screws screws) implements End {

        /** Fastened by something that is not described further. */
        public Fastened(String by, double sideways) {
            this(by, sideways, new NoScrews());
        }

        public Fastened {
            if (!Double.isNaN(sideways)) {
                Sense.positive(sideways, "sideways capacity");
            }
        }
    }

    /** Screws that a plan describes at an end of a post. */
    public sealed interface Screws permits NoScrews, LagScrews {}

    /** None described. */
    public record NoScrews() implements Screws {}

    public Post {
        Sense.finite(x, "x");
        Sense.positive(height, "height");
        Sense.notNegative(gap, "gap");
        Sense.notNegative(lift, "lift");
    }

    /** What the plan says of the stiffness of post, pad and ground together. */
    public sealed interface Stiffness {
        /** A value that holds exactly; infinite when rigid. */
        static Stiffness exactly(double value) {
            return Double.isInfinite(value) ? new Rigid() : new Between(value, value);
        }
    }

    /** Nothing. */
    public record NoStiffness() implements Stiffness {}

    /** Stated not to give at all. */
    public record Rigid() implements Stiffness {}

    /**
     * One value, known no better than such values are.
     *
     * @param value (N/m), positive
     */
    public record About(double value) implements Stiffness {
        public About {
            Sense.positive(value, "stiffness");
        }
    }

    /**
     * A range that the plan stands by.
     *
     * @param soft least (N/m), positive
     * @param stiff greatest (N/m), not less; infinite when rigid
     */
    public record Between(double soft, double stiff) implements Stiffness {
        public Between {
            Sense.stiffness(soft);
            Sense.stiffness(stiff);
            if (!(stiff >= soft)) {
                throw new IllegalArgumentException("the stiff bound must not be softer than the soft one");
            }
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
