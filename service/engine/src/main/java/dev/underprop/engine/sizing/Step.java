package dev.underprop.engine.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The next pads of the same kind in size: what would be saved by one, and gained by the other. */
final class Step {

    private static final Comparator<Trial> BY_SIZE = Comparator.comparingDouble(
                    (Trial t) -> t.candidate().pad().area())
            .thenComparingDouble(t -> t.candidate().pad().thickness())
            .thenComparing(t -> t.candidate().pad().name());

    /** The trials of one post, a list for each kind, smallest first. */
    private final List<List<Trial>> kinds = new ArrayList<>();

    Step(List<Trial> all) {
        for (Trial trial : all) {
            kindOf(trial).add(trial);
        }
        kinds.forEach(kind -> kind.sort(BY_SIZE));
    }

    private List<Trial> kindOf(Trial trial) {
        for (List<Trial> kind : kinds) {
            if (kind.get(0).candidate().alike(trial.candidate())) {
                return kind;
            }
        }
        List<Trial> kind = new ArrayList<>();
        kinds.add(kind);
        return kind;
    }

    /** The next larger (+1) or smaller (-1) pad of its kind, at most one. */
    List<Trial> from(Trial one, int way) {
        List<Trial> kind = kindOf(one);
        int at = kind.indexOf(one) + way;
        return at >= 0 && at < kind.size() ? List.of(kind.get(at)) : List.of();
    }
}
