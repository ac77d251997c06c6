package dev.underprop.engine.sizing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The next pads of the same kind in size: what would be saved by one, and gained by the other. */
final class Step {

    private static final Comparator<Trial> BY_SIZE = Comparator.comparingDouble(
                    (Trial t) -> t.candidate().pad().area())
            .thenComparingDouble(t -> t.candidate().pad().thickness())
            .thenComparing(t -> t.candidate().pad().name());

    private Step() {}

    /** The next larger (+1) or smaller (-1) pad of its kind. */
    static Optional<Trial> from(Trial one, List<Trial> all, int way) {
        List<Trial> kind = all.stream()
                .filter(t -> t.candidate().alike(one.candidate()))
                .sorted(BY_SIZE)
                .toList();
        int at = kind.indexOf(one) + way;
        return at >= 0 && at < kind.size() ? Optional.of(kind.get(at)) : Optional.empty();
    }
}
