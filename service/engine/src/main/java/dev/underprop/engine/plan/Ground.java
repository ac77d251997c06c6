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
     * @param foundingDepthStated whether the plan states the founding depth
     */
    record Presumptive(
            String soil, double pressure, Citation citation, Condition condition, boolean foundingDepthStated)
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
     */
    record Given(double pressure, String source) implements Ground {
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
