package dev.underprop.engine.plan;

import dev.underprop.engine.soil.BearingMethod;
import dev.underprop.engine.soil.GroundWater;
import dev.underprop.engine.soil.Soil;
import dev.underprop.engine.standard.Citation;
import java.util.List;

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

    /**
     * Ground of known strength; what it bears follows from the size of the pad, by one theory.
     *
     * @param method whose factors and corrections hold
     * @param shear its strength
     * @param weight what it weighs, and the water in it
     * @param founding how deep the pads stand in it
     * @param safety factor of safety, at least {@link #LEAST_SAFETY}
     * @param source who gives the strength
     * @param condition as the plan states it
     * @param subgrade how far it gives under a pressure
     */
    record Strength(
            BearingMethod method,
            Shear shear,
            Weight weight,
            Founding founding,
            double safety,
            String source,
            Condition condition,
            Subgrade subgrade)
            implements Ground {

        /** Common practice has 2 to 3, no source. */
        public static final double LEAST_SAFETY = 2;

        public Strength {
            if (!(safety >= LEAST_SAFETY) || Double.isInfinite(safety)) {
                throw new IllegalArgumentException("the factor of safety is at least 2");
            }
        }
    }

    /** Strength of ground. */
    sealed interface Shear {}

    /**
     * Long-term strength.
     *
     * @param cohesion c (Pa), not negative
     * @param friction angle (rad), from above 0 to 45 degrees
     */
    record Drained(double cohesion, double friction) implements Shear {
        public Drained {
            Sense.notNegative(cohesion, "cohesion");
            if (!(friction > 0) || friction > Soil.STEEPEST + Sense.ROUNDING) {
                throw new IllegalArgumentException("an angle of friction lies above 0 and up to 45 degrees");
            }
        }
    }

    /**
     * Strength of clay before water can leave it.
     *
     * @param strength su (Pa), positive
     */
    record Undrained(double strength) implements Shear {
        public Undrained {
            Sense.positive(strength, "undrained strength");
        }
    }

    /**
     * Readings of a pocket penetrometer on clay: unconfined compressive strength, of which half is the undrained strength.
     *
     * @param readings qu (Pa), positive, at least one
     */
    record Penetrometer(List<Double> readings) implements Shear {
        public Penetrometer {
            readings = List.copyOf(readings);
            readings.forEach(reading -> Sense.positive(reading, "reading"));
            if (readings.isEmpty()) {
                throw new IllegalArgumentException("a penetrometer gives at least one reading");
            }
        }

        /** The least one (Pa). */
        public double least() {
            return readings.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        }

        /** The greatest one (Pa). */
        public double greatest() {
            return readings.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        }
    }

    /**
     * What ground weighs.
     *
     * @param unit unit weight above the water (N/m³), positive
     * @param saturated unit weight below it (N/m³), above that of water, NaN where not stated
     * @param water depth of the water below the surface (m), not negative, NaN where not stated
     */
    record Weight(double unit, double saturated, double water) {
        public Weight {
            Sense.positive(unit, "unit weight");
            if (!Double.isNaN(water)) {
                Sense.notNegative(water, "depth of water");
            }
            if (saturated <= GroundWater.WATER) {
                throw new IllegalArgumentException("saturated ground is heavier than water");
            }
        }
    }

    /**
     * How deep pads stand in the ground.
     *
     * @param depth of their underside below the surface (m), not negative, NaN where not stated
     * @param factors whether depth factors count the strength of what stands beside them
     */
    record Founding(double depth, boolean factors) {}

    /**
     * Ground with something weaker below.
     *
     * @param top what the pads stand on; not itself layered
     * @param depth of the weaker layer below the underside of the pads (m), positive
     * @param pressure allowable on the weaker layer (Pa), positive
     * @param source who gives that value
     */
    record Layered(Ground top, double depth, double pressure, String source) implements Ground {
        public Layered {
            Sense.positive(depth, "depth of the weaker layer");
            Sense.positive(pressure, "allowable pressure");
            if (top instanceof Layered) {
                throw new IllegalArgumentException("one weaker layer is computed with");
            }
        }
    }

    /** What the pads stand on, without what may lie below it. */
    default Ground top() {
        return this instanceof Layered layered ? layered.top() : this;
    }

    /** How far ground gives under a pressure. */
    sealed interface Subgrade {}

    /**
     * An elastic modulus that somebody gives, for ground without end.
     *
     * @param soft least E (Pa), positive
     * @param stiff greatest E (Pa), not less
     * @param poisson Poisson's ratio, from 0 to 0.5
     * @param source who says so
     */
    record Elastic(double soft, double stiff, double poisson, String source) implements Subgrade {
        public Elastic {
            Sense.positive(soft, "elastic modulus");
            Sense.positive(stiff, "elastic modulus");
            if (!(stiff >= soft) || !(poisson >= 0) || poisson > 0.5) {
                throw new IllegalArgumentException("an elastic range rises, and Poisson's ratio lies from 0 to 0.5");
            }
        }
    }

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
        Ground top = top();
        if (top instanceof Presumptive presumptive) {
            return presumptive.subgrade();
        }
        if (top instanceof Strength strength) {
            return strength.subgrade();
        }
        return top instanceof Given given ? given.subgrade() : new NoSubgrade();
    }

    /** Condition of the ground under the pads. */
    enum Condition {
        UNDISTURBED,
        FILL,
        ORGANIC,
        /** The plan says that it is not known. */
        UNKNOWN,
        UNSTATED
    }
}
