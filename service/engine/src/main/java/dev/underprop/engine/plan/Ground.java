package dev.underprop.engine.plan;

import dev.underprop.engine.standard.Citation;

/** What the pads stand on. */
public sealed interface Ground {

    /** The plan says nothing. */
    record Unstated() implements Ground {}

    /**
     * A class of a published table of presumptive values.
     *
     * @param soil the class as the table names it
     * @param pressure allowable (Pa), positive
     * @param citation where the value stands
     * @param condition as the plan states it
     * @param foundingDepth depth of the pads' underside below undisturbed ground (m), NaN where not stated
     */
    record Presumptive(String soil, double pressure, Citation citation, Condition condition, double foundingDepth)
            implements Ground {
        public Presumptive {
            Sense.positive(pressure, "allowable pressure");
        }
    }

    /**
     * A value given by somebody.
     *
     * @param pressure allowable (Pa), positive
     * @param source who says so
     * @param condition as the plan states it
     */
    record Given(double pressure, String source, Condition condition) implements Ground {
        public Given {
            Sense.positive(pressure, "allowable pressure");
        }
    }

    /** Condition of the ground under the pads. */
    enum Condition {
        UNDISTURBED,
        FILL,
        ORGANIC,
        UNSTATED
    }
}
