package dev.underprop.engine.plan;

/** Whether a joist is cut away from below at its ends, as the plan declares it. */
public sealed interface EndNotch {

    /** The plan says nothing. */
    record Unstated() implements EndNotch {}

    /**
     * Cut from below, square, at its ends.
     *
     * @param depth of the cut (m), not negative; 0 where it is not cut
     */
    record Cut(double depth) implements EndNotch {
        public Cut {
            Sense.notNegative(depth, "depth of a notch");
        }
    }
}
