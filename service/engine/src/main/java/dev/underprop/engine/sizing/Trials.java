package dev.underprop.engine.sizing;

import dev.underprop.engine.Halt;
import dev.underprop.engine.pad.PadChecks;
import dev.underprop.engine.sizing.Trial.Outcome;
import java.util.ArrayList;
import java.util.List;

/** Every pad of the stock tried under one post, best first. */
final class Trials {

    private final List<Trial> all = new ArrayList<>();
    private final List<Trial> passing;

    Trials(Task task, Loaded post, PadChecks judges, Halt halt) {
        double nearest = task.nearest(post);
        for (Candidate candidate : task.stock()) {
            halt.check();
            all.add(Trial.of(candidate, post.on(candidate.pad(), nearest), judges));
        }
        passing = all.stream().filter(t -> t.outcome() == Outcome.PASSES).toList();
    }

    List<Trial> all() {
        return all;
    }

    /** Those that pass, best first. */
    List<Trial> passing() {
        return passing;
    }

    /** Those of which something is not known. */
    List<Trial> open() {
        return all.stream().filter(t -> t.outcome() == Outcome.OPEN).toList();
    }

    /**
     * Those that no other one betters in area, weight and, where all have one, price; best first. What betters one stands before
     * it in any objective, so that those kept so far are enough to compare with.
     */
    List<Trial> front() {
        boolean priced =
                passing.stream().noneMatch(t -> Double.isNaN(t.candidate().price()));
        List<Trial> front = new ArrayList<>();
        for (Trial one : passing) {
            if (front.stream().noneMatch(other -> betters(other.candidate(), one.candidate(), priced))) {
                front.add(one);
            }
        }
        return front;
    }

    private static boolean betters(Candidate one, Candidate other, boolean priced) {
        boolean asGood = one.pad().area() <= other.pad().area()
                && one.weight() <= other.weight()
                && (!priced || one.price() <= other.price());
        return asGood
                && (one.pad().area() < other.pad().area()
                        || one.weight() < other.weight()
                        || priced && one.price() < other.price());
    }
}
