package dev.underprop.engine.clause.aisc_dg1_2006;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 3.1: base plates under a load in their middle. The pressure is even, and the plate stands out as a cantilever. */
public final class Section3_1 {

    private static final Citation ROUND =
            Citation.remembered("AISC Design Guide 1", "2nd, 2006", "3.1, 0.80 of the outside of a round post");
    private static final Citation SQUARE =
            Citation.remembered("AISC Design Guide 1", "2nd, 2006", "3.1, 0.95 of the outside of a square tube");

    private static final double OF_ROUND = 0.80;
    private static final double OF_SQUARE = 0.95;

    private Section3_1() {}

    /**
     * How far a plate stands out beyond the line at which it bends (m), 0 where the post covers all that presses.
     *
     * @param pressed length of what presses on the plate, the post over its middle (m), positive
     * @param diameter outside of the round post (m), positive
     */
    public static Cited besideRound(double pressed, double diameter) {
        return new Cited(out(pressed, OF_ROUND * Admissible.positive(diameter, "diameter")), "m", ROUND);
    }

    /**
     * The same beside a square tube.
     *
     * @param pressed length of what presses on the plate (m), positive
     * @param side outside of the tube (m), positive
     */
    public static Cited besideSquare(double pressed, double side) {
        return new Cited(out(pressed, OF_SQUARE * Admissible.positive(side, "side")), "m", SQUARE);
    }

    private static double out(double pressed, double held) {
        return Math.max(0, (Admissible.positive(pressed, "pressed length") - held) / 2);
    }
}
