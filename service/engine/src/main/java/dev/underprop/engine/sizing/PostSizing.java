package dev.underprop.engine.sizing;

import dev.underprop.engine.check.CheckResult;
import java.util.List;

/**
 * What was found for one post.
 *
 * @param post the post and its loads
 * @param state what came of it
 * @param proposals pads that pass and that no other betters, the one that is proposed first
 * @param passing pads that pass
 * @param tried pads tried
 * @param undecided pads that fail nothing and of which something is not known
 * @param open the best of them of each kind, where no pad passes
 * @param shortfall why nothing passes, at most one
 */
public record PostSizing(
        Loaded post,
        State state,
        List<Proposal> proposals,
        int passing,
        int tried,
        int undecided,
        List<Trial> open,
        List<Shortfall> shortfall) {

    public PostSizing {
        proposals = List.copyOf(proposals);
        open = List.copyOf(open);
        shortfall = List.copyOf(shortfall);
    }

    /** What came of a post, best first. */
    public enum State {
        /** Every check of the pad that is proposed was made and passes. */
        ADEQUATE,
        /** Nothing of it fails, and something was not checked. */
        INCOMPLETE,
        /** No pad passes, or the one that does lies over a neighbour. */
        NONE
    }

    /**
     * A pad that passes.
     *
     * @param trial the pad
     * @param checks every check of it, in table order; of the first proposal those with its neighbours too
     * @param smaller the next smaller pad of its kind, at most one
     * @param larger the next larger one, at most one
     */
    public record Proposal(Trial trial, List<CheckResult> checks, List<Trial> smaller, List<Trial> larger) {
        public Proposal {
            checks = List.copyOf(checks);
            smaller = List.copyOf(smaller);
            larger = List.copyOf(larger);
        }
    }

    /** Why nothing passes. */
    public sealed interface Shortfall {}

    /** There are no pads. */
    public record NoStock() implements Shortfall {}

    /**
     * The ground bears no pad, or it is not known what it bears.
     *
     * @param refused whether it bears none
     * @param reason in words
     */
    public record NoGround(boolean refused, String reason) implements Shortfall {}

    /**
     * The pad that is nearest to passing.
     *
     * @param candidate the pad
     * @param checks every check of it
     * @param load the greatest load of the post under which it passes (N), 0 where it never does
     * @param area area that would spread the load far enough (m²), NaN where the ground is not what it fails on
     * @param thickness thickness with which it would pass (m), NaN where that does not help
     */
    public record Nearest(Candidate candidate, List<CheckResult> checks, double load, double area, double thickness)
            implements Shortfall {
        public Nearest {
            checks = List.copyOf(checks);
        }
    }
}
