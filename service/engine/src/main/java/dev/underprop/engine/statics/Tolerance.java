package dev.underprop.engine.statics;

/** The tolerances of the contact solve, each with its reason. */
final class Tolerance {

    /**
     * Two places on one member nearer than this are one place (m). Below what a tape shows (1 mm), and it keeps the
     * stiffness of the shortest element within about 1e12 of the longest, so that the solve keeps nine digits.
     */
    static final double SAME_PLACE = 1e-3;

    /**
     * Tension smaller than this part of the total load counts as none: rounding of the solve is near 1e-12. It grows with
     * the movement, so where a member has drifted off on weak springs by more than a length, the part grows alike.
     */
    static final double TENSION = 1e-9;

    /**
     * Where gaps or lifts act, a case counts as weighing at least this part of the heaviest unit: answers to gaps are
     * rounded as if that unit acted, so a lift without load must not be held to zero.
     */
    static final double LIGHT = 0.1;

    /** Penetration smaller than this part of the largest movement counts as none. */
    static final double PENETRATION = 1e-9;

    /** Penetration always allowed for rounding (m), far below anything measured. */
    static final double PENETRATION_FLOOR = 1e-13;

    /**
     * A pivot of a joist's own matrix smaller than this part of its diagonal is replaced, so that the solve can go on.
     * It decides nothing: {@link RigidMotions} says what is loose.
     */
    static final double PIVOT = 1e-13;

    /** As {@link #PIVOT}, for the carriers' matrix, which is kept as two doubles a number. */
    static final double TWOFOLD_PIVOT = 1e-22;

    /** A movement that nothing resists is given this part of its diagonal, so that the way it goes can be seen. */
    static final double PERTURBED_PIVOT = 1e-8;

    /** Rounding of a sum of a few terms, as part of the largest. */
    static final double ROUNDING = 1e-15;

    /** Rounding must stay below this part of a tolerance, or more digits are kept. */
    static final double FAR_BELOW = 1e-2;

    private Tolerance() {}
}
