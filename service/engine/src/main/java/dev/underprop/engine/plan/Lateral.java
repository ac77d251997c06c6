package dev.underprop.engine.plan;

import java.util.List;

/** Sideways loads on the supported bay, as the engineer of the job gives them. */
public sealed interface Lateral {

    /** The plan says nothing. */
    record Unstated() implements Lateral {}

    /**
     * Stated to be none.
     *
     * @param by who says so, and why
     */
    record None(String by) implements Lateral {}

    /**
     * Given.
     *
     * @param by who gives them
     * @param forces the forces, at the level of their standard: they enter combinations with its factors
     */
    record Given(String by, List<Force> forces) implements Lateral {
        public Given {
            forces = List.copyOf(forces);
        }
    }

    /**
     * One sideways force on the bay.
     *
     * @param name as the plan calls it
     * @param origin wind or earthquake
     * @param along in x (N), not negative: it may act either way
     * @param across in y (N), not negative: it may act either way
     */
    record Force(String name, Origin origin, double along, double across) {
        public Force {
            Sense.notNegative(along, "force along");
            Sense.notNegative(across, "force across");
        }
    }

    /** Where a sideways force comes from. */
    enum Origin {
        WIND,
        SEISMIC
    }
}
