package dev.underprop.engine.plan;

import dev.underprop.engine.section.RoundTube;

/**
 * A telescopic post: an outer tube, an inner tube held in it by a pin, and a screw at the head or under the foot.
 *
 * @param outer tube, below
 * @param inner tube, above
 * @param outerLength of the outer tube (m), positive
 * @param overlap of the inner tube within the outer one, at its least in any post of the type (m), positive
 * @param eccentricity of the load at both ends, to the same side (m), not negative
 * @param pin that joins the tubes, or that none is described
 * @param thread the screw, that there is none, or that nothing is said of it
 */
public record Telescope(
        Part outer, Part inner, double outerLength, double overlap, double eccentricity, Joint pin, Thread thread)
        implements PostType.Shaft {

    public Telescope {
        Sense.positive(outerLength, "length of the outer tube");
        Sense.positive(overlap, "overlap");
        Sense.notNegative(eccentricity, "eccentricity");
        if (!(inner.tube.diameter() < outer.tube.inside())) {
            throw new IllegalArgumentException("the inner tube must fit into the outer one");
        }
        if (overlap > outerLength) {
            throw new IllegalArgumentException("the overlap must not exceed the outer tube");
        }
    }

    /** Clear space between the tubes over the diameter (m). */
    public double clearance() {
        return outer.tube.inside() - inner.tube.diameter();
    }

    /**
     * One tube.
     *
     * @param tube its section
     * @param yield yield stress Fy (Pa), positive, NaN where not stated
     */
    public record Part(RoundTube tube, double yield) {}

    /** What joins the tubes. */
    public sealed interface Joint {}

    /** Not described. */
    public record NoPin() implements Joint {}

    /**
     * A pin through both walls of both tubes.
     *
     * @param diameter (m), positive
     * @param hole of the holes in both tubes (m), not below the diameter
     * @param yield yield stress Fy (Pa), positive
     * @param strength tensile strength Fu (Pa), not below the yield stress
     */
    public record Pin(double diameter, double hole, double yield, double strength) implements Joint {
        public Pin {
            Sense.positive(diameter, "diameter of the pin");
            Sense.positive(yield, "yield stress of the pin");
            if (hole < diameter || strength < yield) {
                throw new IllegalArgumentException("a hole takes its pin, and a steel breaks after it yields");
            }
        }
    }

    /** What is said of the screw. */
    public sealed interface Thread {}

    /** Nothing. */
    public record UnstatedScrew() implements Thread {}

    /** That there is none. */
    public record NoScrew() implements Thread {}

    /**
     * A screw.
     *
     * @param foot whether it stands under the outer tube; at the head otherwise
     * @param root diameter at the root of the thread (m), positive
     * @param yield yield stress Fy of the screw (Pa), positive
     * @param nutYield yield stress Fy of its nut (Pa), positive
     * @param exposed length that stands out of the nut, at its greatest (m), positive
     * @param engaged length of thread within the nut, at its least (m), positive
     * @param play sideways, of the screw in its nut (m), not negative
     */
    public record Screw(
            boolean foot, double root, double yield, double nutYield, double exposed, double engaged, double play)
            implements Thread {
        public Screw {
            Sense.positive(root, "root diameter");
            Sense.positive(yield, "yield stress of the screw");
            Sense.positive(nutYield, "yield stress of the nut");
            Sense.positive(exposed, "exposed length");
            Sense.positive(engaged, "engaged length");
            Sense.notNegative(play, "play");
        }
    }
}
