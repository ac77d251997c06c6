package dev.underprop.engine.clause.aisc360_16;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Appendix 8: second-order moments of a member between its ends, amplified. */
public final class Appendix8 {

    private static final Citation AMPLIFIER = Citation.remembered("AISC", "360-16", "Appendix 8, Equation A-8-3");

    /** Loads of allowable stress combinations are raised by it before they are amplified. */
    private static final double ALPHA = 1.6;

    private Appendix8() {}

    /**
     * B1 with Cm = 1, the same moment all along.
     *
     * @param load P (N), not negative; 1.6 P below Pe1
     * @param euler Pe1 of the member between its pins (N), positive
     */
    public static Cited amplifier(double load, double euler) {
        double left = 1 - ALPHA * Admissible.notNegative(load, "P") / Admissible.positive(euler, "Pe1");
        if (!(left > 0)) {
            throw new IllegalArgumentException("1.6 P must be below Pe1");
        }
        return new Cited(1 / left, "B1", AMPLIFIER);
    }

    /** The load (N) below which {@link #amplifier} holds. */
    public static Cited limit(double euler) {
        return new Cited(Admissible.positive(euler, "Pe1") / ALPHA, "Pe1/alpha", AMPLIFIER);
    }
}
