package dev.underprop.engine.sizing;

import dev.underprop.engine.sizing.PostSizing.State;
import java.util.List;

/**
 * Pads for all posts.
 *
 * @param posts in the order in which they were given
 * @param neighbours pairs of pads that press on the same ground
 * @param below what all others add below each pad that is proposed
 */
public record PadSizing(List<PostSizing> posts, List<Neighbours> neighbours, List<Below> below) {

    public PadSizing {
        posts = List.copyOf(posts);
        neighbours = List.copyOf(neighbours);
        below = List.copyOf(below);
    }

    /** The worst over all posts. */
    public State state() {
        return posts.stream().map(PostSizing::state).reduce(State.ADEQUATE, (a, b) -> a.compareTo(b) >= 0 ? a : b);
    }

    /** Whether each post is proposed the same pad as in another sizing. */
    boolean same(PadSizing other) {
        for (int p = 0; p < posts.size(); p++) {
            if (!pads(p).equals(other.pads(p))) {
                return false;
            }
        }
        return true;
    }

    private List<Candidate> pads(int post) {
        return posts.get(post).proposals().stream()
                .limit(1)
                .map(p -> p.trial().candidate())
                .toList();
    }
}
