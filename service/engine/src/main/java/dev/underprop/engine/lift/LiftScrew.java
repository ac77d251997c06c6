package dev.underprop.engine.lift;

import dev.underprop.engine.standard.Admissible;

/**
 * The screw of one post. NaN stands for what is not stated; nothing is put in its place.
 *
 * @param lead travel in one turn (m), positive
 * @param part smallest turn as part of a whole one, positive, at most 1
 * @param thread what its torque needs
 * @param wrench length of the wrench (m)
 * @param pull greatest pull that one person may be asked for (N)
 * @param travel how far it can be raised from where it is snug (m)
 * @param down how far it can be let down from there (m)
 */
public record LiftScrew(
        double lead, double part, Rubbing thread, double wrench, double pull, double travel, double down) {

    /** A screw of which it is not stated how far down it can go. */
    public LiftScrew(double lead, double part, Rubbing thread, double wrench, double pull, double travel) {
        this(lead, part, thread, wrench, pull, travel, Double.NaN);
    }

    public LiftScrew {
        Admissible.positive(lead, "lead");
        if (!(part > 0 && part <= 1)) {
            throw new IllegalArgumentException("the smallest turn is part of a turn");
        }
    }

    /**
     * What resists turning.
     *
     * @param mean mean diameter of the thread (m)
     * @param halfAngle of its flank (rad)
     * @param least least friction of thread
     * @param most greatest friction of thread
     * @param collarFriction greatest friction of the collar; 0 where it turns on a bearing that is said to have none
     * @param collarRadius mean radius of the collar (m)
     */
    public record Rubbing(
            double mean, double halfAngle, double least, double most, double collarFriction, double collarRadius) {
        /** Nothing is stated. */
        public static final Rubbing UNSTATED =
                new Rubbing(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

        /** Whether enough is stated for a torque. */
        public boolean stated() {
            return Double.isFinite(mean + halfAngle + least + most)
                    && (collarFriction == 0 || Double.isFinite(collarFriction + collarRadius));
        }
    }

    /** Raise by the smallest turn (m). */
    public double step() {
        return lead * part;
    }

    LiftScrew finer(double by) {
        return new LiftScrew(lead, part / by, thread, wrench, pull, travel, down);
    }
}
