package dev.underprop.engine.plan;

/** What holds something sideways in one direction, as the plan declares it. */
public sealed interface Restraint {

    /** The plan says nothing. */
    record Undeclared() implements Restraint {}

    /** Declared free: nothing holds it. */
    record Free() implements Restraint {}

    /**
     * Declared held.
     *
     * @param by what holds it
     * @param capacity allowable force (N), NaN where the plan does not state it
     */
    record Held(String by, double capacity) implements Restraint {
        public Held {
            if (!Double.isNaN(capacity)) {
                Sense.positive(capacity, "capacity of a restraint");
            }
        }
    }

    /**
     * Both directions.
     *
     * @param along in x, along the shores
     * @param across in y, along the joists
     */
    record Sides(Restraint along, Restraint across) {
        /** Nothing is said of either direction. */
        public static final Sides UNDECLARED = new Sides(new Undeclared(), new Undeclared());
    }
}
