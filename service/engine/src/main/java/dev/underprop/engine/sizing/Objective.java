package dev.underprop.engine.sizing;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What is to be least. The others decide between equals; a price that is not known is no price and stands last. */
public enum Objective {
    AREA,
    WEIGHT,
    COST;

    private static final ToDoubleFunction<Candidate> OF_AREA = c -> c.pad().area();
    private static final ToDoubleFunction<Candidate> OF_WEIGHT = Candidate::weight;
    private static final ToDoubleFunction<Candidate> OF_COST = Candidate::price;

    /** Best first; the same candidates always come in the same order. */
    Comparator<Candidate> bestFirst() {
        List<ToDoubleFunction<Candidate>> keys = switch (this) {
            case AREA -> List.of(OF_AREA, OF_WEIGHT, OF_COST);
            case WEIGHT -> List.of(OF_WEIGHT, OF_AREA, OF_COST);
            case COST -> List.of(OF_COST, OF_AREA, OF_WEIGHT);
        };
        return Comparator.comparingDouble(keys.get(0))
                .thenComparingDouble(keys.get(1))
                .thenComparingDouble(keys.get(2))
                .thenComparing(c -> c.pad().name());
    }
}
