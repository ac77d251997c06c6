package dev.underprop.engine.assess;

import dev.underprop.engine.assess.Setting.Give;
import dev.underprop.engine.assess.Setting.History;
import dev.underprop.engine.assess.Setting.Ties;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.statics.LoadCase;
import dev.underprop.engine.statics.Rules;
import dev.underprop.engine.statics.Solution;
import dev.underprop.engine.statics.UnitLoad;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Where everything sits in a situation: posts as far raised or clear as the plan says, and, in the history as found, shores
 * snug in the shape as found and rebuilt bearings snug in the shape in which they were put back.
 */
final class Seats {

    private static final int NO_UNIT = -1;

    private final Structure structure;
    private final Situation situation;
    private final Map<Ties, Rules> rules = new EnumMap<>(Ties.class);
    private final int posts;
    private final Map<Give, Integer> history = new EnumMap<>(Give.class);
    private final Map<Give, List<UnitLoad.Offset>> rebuilt = new EnumMap<>(Give.class);
    private final boolean followed;

    private Seats(
            Structure structure, Situation situation, Map<Give, List<UnitLoad.Offset>> rebuilt, boolean followed) {
        this.structure = structure;
        this.situation = situation;
        for (Ties ties : Ties.values()) {
            rules.put(ties, structure.frame().rules(situation, ties));
        }
        this.posts = posts();
        this.rebuilt.putAll(rebuilt);
        this.followed = followed;
        for (Give give : structure.gives()) {
            List<UnitLoad.Offset> shifts = new ArrayList<>(structure.found(give).shifts());
            shifts.addAll(rebuilt.getOrDefault(give, List.of()));
            history.put(
                    give, shifts.isEmpty() ? NO_UNIT : structure.solver(give).addOffsets(shifts));
        }
    }

    /** The first situation: straight after the floor as found. */
    static Seats first(Structure structure, Situation situation) {
        boolean stands = structure.gives().stream()
                .allMatch(give -> structure.found(give).stands());
        return new Seats(structure, situation, Map.of(), stands);
    }

    /** The situation after this one. What was out and comes back is set snug in the shape of this situation. */
    Seats next(Situation after) {
        Map<Give, List<UnitLoad.Offset>> again = new EnumMap<>(Give.class);
        boolean stillFollowed = followed;
        PlanFrame frame = structure.frame();
        for (Give give : structure.gives()) {
            List<UnitLoad.Offset> kept = new ArrayList<>();
            for (UnitLoad.Offset one : rebuilt.getOrDefault(give, List.of())) {
                if (!frame.taken(one.contact(), situation)) {
                    kept.add(one);
                }
            }
            List<Integer> back = new ArrayList<>();
            for (int c = 0; c < frame.contacts(); c++) {
                if (frame.taken(c, situation) && !frame.taken(c, after)) {
                    back.add(c);
                }
            }
            if (!back.isEmpty()) {
                Solution shape = dead(give, History.AS_FOUND);
                stillFollowed &= shape.outcome() == Solution.Outcome.SETTLED;
                for (int c : back) {
                    double gap = frame.frame().contacts().get(c).gap();
                    kept.add(new UnitLoad.Offset(c, gap - shape.opening(c)));
                }
            }
            again.put(give, kept);
        }
        return new Seats(structure, after, again, stillFollowed);
    }

    /** The shape under dead load. */
    Solution dead(Give give, History of) {
        LoadCase dead = new LoadCase(new int[] {structure.model().dead()}, new double[] {1});
        return structure.solver(give).solve(placed(dead, of, give), rules(Ties.HOLD));
    }

    /** Unit of what posts are raised by or stand clear. */
    private int posts() {
        List<UnitLoad.Offset> offsets = new ArrayList<>();
        for (int c = 0; c < structure.frame().contacts(); c++) {
            if (structure.frame().places().get(c) instanceof ContactPlace.OnPost head) {
                Post post = structure.plan().shores().get(head.shore()).posts().get(head.post());
                double gap = post.gap() - situation.liftOf(head.shore(), head.post(), post);
                if (gap != 0) {
                    offsets.add(new UnitLoad.Offset(c, gap));
                }
            }
        }
        return offsets.isEmpty() ? NO_UNIT : structure.solver(Give.RIGID).addOffsets(offsets);
    }

    /** Whether the history could be followed up to this situation. */
    boolean followed() {
        return followed;
    }

    /** The histories to be solved. */
    List<History> histories() {
        return followed ? List.of(History.WISHED, History.AS_FOUND) : List.of(History.WISHED);
    }

    /** A case with gaps and lifts as they are in a history. */
    LoadCase placed(LoadCase load, History of, Give give) {
        LoadCase placed = load;
        // Gaps come before loads, so that the last unit tells cases apart.
        if (of == History.AS_FOUND) {
            placed = before(placed, history.getOrDefault(give, NO_UNIT));
        }
        return before(placed, posts);
    }

    private static LoadCase before(LoadCase load, int unit) {
        if (unit == NO_UNIT) {
            return load;
        }
        int[] units = new int[load.size() + 1];
        double[] factors = new double[units.length];
        units[0] = unit;
        factors[0] = 1;
        for (int i = 0; i < load.size(); i++) {
            units[i + 1] = load.unit(i);
            factors[i + 1] = load.factor(i);
        }
        return new LoadCase(units, factors);
    }

    Rules rules(Ties ties) {
        Rules one = rules.get(ties);
        if (one == null) {
            throw new IllegalStateException("no rules");
        }
        return one;
    }
}
