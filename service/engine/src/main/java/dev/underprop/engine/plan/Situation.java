package dev.underprop.engine.plan;

import java.util.List;

/**
 * A state of the job to be survived.
 *
 * @param name as the plan calls it
 * @param removed indices of the bearings taken away whole
 * @param lifts posts raised in this situation, instead of what the post itself says
 * @param parts bearings taken away over part of their length
 * @param piers piers of girders taken away
 * @param clear indices of the bearings that the floor is meant to be raised clear of
 */
public record Situation(
        String name,
        List<Integer> removed,
        List<PostLift> lifts,
        List<Part> parts,
        List<PierOut> piers,
        List<Integer> clear) {

    /** A situation in which bearings are there whole or not at all. */
    public Situation(String name, List<Integer> removed, List<PostLift> lifts) {
        this(name, removed, lifts, List.of(), List.of(), List.of());
    }

    /**
     * Part of a bearing taken away.
     *
     * @param bearing index of the bearing
     * @param from smallest x (m)
     * @param to greatest x (m)
     */
    public record Part(int bearing, double from, double to) {
        public Part {
            if (!(to > from)) {
                throw new IllegalArgumentException("a part must end after it begins");
            }
        }
    }

    /**
     * A pier taken away.
     *
     * @param bearing index of the girder among the bearings
     * @param pier index of the pier in it
     */
    public record PierOut(int bearing, int pier) {}

    /**
     * A post raised.
     *
     * @param shore index of the shore
     * @param post index of the post in it
     * @param lift (m), not negative
     */
    public record PostLift(int shore, int post, double lift) {
        public PostLift {
            Sense.notNegative(lift, "lift");
        }
    }

    public Situation {
        removed = List.copyOf(removed);
        lifts = List.copyOf(lifts);
        parts = List.copyOf(parts);
        piers = List.copyOf(piers);
        clear = List.copyOf(clear);
    }

    /** Whether anything that carries the floor is taken away. */
    public boolean takesAway() {
        return !removed.isEmpty() || !parts.isEmpty() || !piers.isEmpty();
    }

    /** Whether a joist loses its seat on a bearing. */
    public boolean takes(int bearing, Joist joist) {
        return removed.contains(bearing)
                || parts.stream()
                        .anyMatch(p -> p.bearing == bearing
                                && joist.x() >= p.from - Sense.ROUNDING
                                && joist.x() <= p.to + Sense.ROUNDING);
    }

    /** Whether a pier is taken away, by itself or with its girder. */
    public boolean takesPier(int bearing, int pier) {
        return removed.contains(bearing) || piers.contains(new PierOut(bearing, pier));
    }

    /** Lift (m) of a post in this situation. */
    public double liftOf(int shore, int post, Post described) {
        return lifts.stream()
                .filter(l -> l.shore == shore && l.post == post)
                .mapToDouble(PostLift::lift)
                .findFirst()
                .orElse(described.lift());
    }
}
