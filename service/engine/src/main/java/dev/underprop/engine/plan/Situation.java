package dev.underprop.engine.plan;

import java.util.List;

/**
 * A state of the job to be survived.
 *
 * @param name as the plan calls it
 * @param removed indices of the bearings taken away
 * @param lifts posts raised in this situation, instead of what the post itself says
 */
public record Situation(String name, List<Integer> removed, List<PostLift> lifts) {

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
