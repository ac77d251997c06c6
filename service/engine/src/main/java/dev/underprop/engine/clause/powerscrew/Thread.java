package dev.underprop.engine.clause.powerscrew;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Outcome;

/**
 * The thread of a screw under an axial load. The flank's slope presses the thread by the secant of half its angle (the usual
 * form, which leaves out the lead angle's share in it).
 *
 * @param mean diameter dm (m), positive
 * @param lead travel in one turn (m): pitch times starts, positive
 * @param halfAngle of the flank to a plane across the screw (rad): 0 for a square thread, 14.5 degrees for Acme
 */
public record Thread(double mean, double lead, double halfAngle) {

    private static final String BOOK = "Shigley, Mechanical Engineering Design";
    private static final String EDITION = "10th edition";
    private static final Citation LEAD_ANGLE = Citation.remembered(BOOK, EDITION, "8-2, lead angle");
    private static final Citation RAISE = Citation.remembered(BOOK, EDITION, "equations 8-1 and 8-5");
    private static final Citation LOWER = Citation.remembered(BOOK, EDITION, "equation 8-2, with the flank's secant");
    private static final Citation LOCKS = Citation.remembered(BOOK, EDITION, "equation 8-3, with the flank's secant");
    private static final Citation EFFICIENCY = Citation.remembered(BOOK, EDITION, "equation 8-4");

    public Thread {
        Admissible.positive(mean, "mean diameter");
        Admissible.positive(lead, "lead");
        Admissible.notNegative(halfAngle, "half angle");
        if (!(halfAngle < Math.PI / 4)) {
            throw new IllegalArgumentException("half of the thread's angle is less than 45 degrees, got " + halfAngle);
        }
    }

    /** Lead angle (rad). */
    public Cited leadAngle() {
        return new Cited(StrictMath.atan(slope()), "lambda", LEAD_ANGLE);
    }

    /**
     * Torque on the thread that raises a load (N·m), without collar. Refused where friction and lead together bind.
     *
     * @param load (N), not negative
     * @param friction coefficient of the thread, positive
     */
    public Outcome raising(double load, double friction) {
        Admissible.notNegative(load, "load");
        double f = pressed(friction);
        if (!(1 - f * slope() > 0)) {
            return new Outcome.Refused(
                    "a thread of friction " + friction + " and lead over girth " + slope() + " cannot be turned up",
                    RAISE);
        }
        return Outcome.of(load * mean / 2 * (slope() + f) / (1 - f * slope()), "TR", RAISE);
    }

    /**
     * Torque on the thread that lowers a load (N·m), without collar; negative where the load turns the screw by itself.
     *
     * @param load (N), not negative
     * @param friction coefficient of the thread, positive
     */
    public Cited lowering(double load, double friction) {
        Admissible.notNegative(load, "load");
        double f = pressed(friction);
        return new Cited(load * mean / 2 * (f - slope()) / (1 + f * slope()), "TL", LOWER);
    }

    /** Whether the screw stays where it is left: friction above the slope of the thread. */
    public boolean selfLocking(double friction) {
        return pressed(friction) > slope();
    }

    /** Least friction at which it stays where it is left. */
    public Cited lockingFriction() {
        return new Cited(slope() * StrictMath.cos(halfAngle), "f", LOCKS);
    }

    /** Work on the load over work on the screw when raising, collar left out. */
    public Cited efficiency(double friction) {
        double f = pressed(friction);
        return new Cited(slope() * (1 - f * slope()) / (slope() + f), "e", EFFICIENCY);
    }

    private double slope() {
        return lead / (Math.PI * mean);
    }

    private double pressed(double friction) {
        return Admissible.positive(friction, "friction") / StrictMath.cos(halfAngle);
    }
}
