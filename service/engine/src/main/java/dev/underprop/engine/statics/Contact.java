package dev.underprop.engine.statics;

/**
 * A place where one thing may press on another. The force is positive in compression. An unfastened contact cannot
 * pull; a fastened one can, and its pull is judged elsewhere.
 */
public sealed interface Contact {

    /** Clear space (m) to be closed before the contact presses; negative when the support is raised (a lift). */
    double gap();

    /** Stiffness of the support (N/m); {@link Double#POSITIVE_INFINITY} when rigid. */
    double stiffness();

    /** Whether the contact can also pull. */
    boolean fastened();

    /**
     * A joist on a bearing that stands on the ground.
     *
     * @param joist joist number
     * @param y centre of the seat (m)
     * @param stiffness (N/m), infinite when rigid
     * @param gap clear space under the joist (m)
     * @param fastened whether the seat can hold the joist down
     */
    record OnGround(int joist, double y, double stiffness, double gap, boolean fastened) implements Contact {
        public OnGround {
            requireStiffness(stiffness);
            requireGap(gap);
        }
    }

    /**
     * A joist on a carrier, where the two cross.
     *
     * @param joist joist number
     * @param carrier carrier number
     * @param gap clear space between them (m)
     * @param fastened whether the joist is held down on the carrier
     */
    record OnCarrier(int joist, int carrier, double gap, boolean fastened) implements Contact {
        public OnCarrier {
            requireGap(gap);
        }

        @Override
        public double stiffness() {
            return Double.POSITIVE_INFINITY;
        }
    }

    /**
     * A carrier on a post or pier.
     *
     * @param carrier carrier number
     * @param x centre of the prop (m)
     * @param stiffness of post, pad and ground in series (N/m), infinite when rigid
     * @param gap clear space over the prop (m); negative for a raised prop
     * @param fastened whether the head can hold the carrier down
     */
    record OnProp(int carrier, double x, double stiffness, double gap, boolean fastened) implements Contact {
        public OnProp {
            requireStiffness(stiffness);
            requireGap(gap);
        }
    }

    private static void requireStiffness(double stiffness) {
        if (!(stiffness > 0)) {
            throw new IllegalArgumentException("stiffness must be positive, or infinite for a rigid support");
        }
    }

    private static void requireGap(double gap) {
        if (!Double.isFinite(gap)) {
            throw new IllegalArgumentException("gap must be finite");
        }
    }
}
