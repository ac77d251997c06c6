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
     * @param subgrade how far it gives under a pressure
     */
    record Presumptive(
            String soil,
            double pressure,
            Citation citation,
            Condition condition,
            double foundingDepth,
            Subgrade subgrade)
            implements Ground {

        /** A class of whose giving nothing is said. */
        public Presumptive(String soil, double pressure, Citation citation, Condition condition, double foundingDepth) {
            this(soil, pressure, citation, condition, foundingDepth, new NoSubgrade());
        }

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
     * @param subgrade how far it gives under a pressure
     */
    record Given(double pressure, String source, Condition condition, Subgrade subgrade) implements Ground {

        /** A value, with nothing said of how far the ground gives. */
        public Given(double pressure, String source, Condition condition) {
            this(pressure, source, condition, new NoSubgrade());
        }

        public Given {
            Sense.positive(pressure, "allowable pressure");
        }
    }

    /** How far ground gives under a pressure. */
    sealed interface Subgrade {}

    /** The plan says nothing. */
    record NoSubgrade() implements Subgrade {}

    /**
     * A modulus of subgrade reaction that somebody gives for the pads themselves.
     *
     * @param soft least (N/m³), positive
     * @param stiff greatest (N/m³), not less
     * @param source who says so
     */
    record Modulus(double soft, double stiff, String source) implements Subgrade {
        public Modulus {
            Sense.positive(soft, "subgrade modulus");
            Sense.positive(stiff, "subgrade modulus");
            if (!(stiff >= soft)) {
                throw new IllegalArgumentException("the stiff bound must not be softer than the soft one");
            }
        }
    }

    /** How far this ground gives under a pressure, as the plan says. */
    default Subgrade givesAs() {
        if (this instanceof Presumptive presumptive) {
            return presumptive.subgrade();
        }
        return this instanceof Given given ? given.subgrade() : new NoSubgrade();
    }

    /** Condition of the ground under the pads. */
    enum Condition {
        UNDISTURBED,
        FILL,
        ORGANIC,
        UNSTATED
    }
}
