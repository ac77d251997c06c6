package dev.underprop.engine.lift;

import dev.underprop.engine.standard.Admissible;
import java.util.ArrayList;
import java.util.List;

/**
 * What no turn may exceed. NaN stands for what is not stated.
 *
 * @param perTurn greatest raise of one post at a time (m)
 * @param perStage greatest raise of any post between two holds (m), positive
 * @param perDay greatest raise of any post in 24 hours (m)
 * @param total greatest raise of any post (m)
 * @param hold least time between two stages (s), positive
 * @param slope greatest change of slope between neighbours from as found
 * @param ratios greatest share of strength that may be used
 * @param mayLeave bearings that the floor may come clear of; on all others it must stay
 */
public record LiftLimits(
        double perTurn,
        double perStage,
        double perDay,
        double total,
        double hold,
        Slope slope,
        Ratios ratios,
        List<Integer> mayLeave) {

    public LiftLimits {
        Admissible.positive(perStage, "limit per stage");
        Admissible.positive(hold, "hold");
        mayLeave = List.copyOf(mayLeave);
    }

    /** Greatest raise of any post in one stage: no stage may bring more than a day (m). */
    public double stage() {
        return Double.isNaN(perDay) ? perStage : Math.min(perStage, perDay);
    }

    /** The same where the floor may come clear of more bearings: what is built up under it takes its load little by little. */
    LiftLimits leaving(List<Integer> more) {
        List<Integer> all = new ArrayList<>(mayLeave);
        all.addAll(more);
        return new LiftLimits(perTurn, perStage, perDay, total, hold, slope, ratios, all);
    }

    /**
     * A limit of the change of slope.
     *
     * @param value movement over distance, NaN where none is stated
     * @param name the criterion in words
     */
    public record Slope(double value, String name) {
        /** Not stated. */
        public static final Slope UNSTATED = new Slope(Double.NaN, "");
    }

    /**
     * Shares of strength, each above 0 and at most 1.
     *
     * @param post of a post
     * @param beam of a shore beam or girder
     * @param joist of a joist
     * @param pad of what the ground under a pad may take
     */
    public record Ratios(double post, double beam, double joist, double pad) {
        /** All of it. */
        public static final Ratios WHOLE = new Ratios(1, 1, 1, 1);

        public Ratios {
            for (double one : new double[] {post, beam, joist, pad}) {
                if (!(one > 0 && one <= 1)) {
                    throw new IllegalArgumentException("a share of strength is above 0 and at most 1");
                }
            }
        }
    }
}
