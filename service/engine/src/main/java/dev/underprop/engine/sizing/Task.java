package dev.underprop.engine.sizing;

import dev.underprop.engine.pad.PadChecks;
import java.util.List;

/**
 * What is asked.
 *
 * @param posts that want pads
 * @param site where they stand
 * @param stock pads at hand
 * @param objective what is to be least
 * @param working whether the checks of what is proposed tell how they were worked out
 */
public record Task(
        List<Loaded> posts, PadChecks.Site site, List<Candidate> stock, Objective objective, boolean working) {

    /** Without calculation records. */
    public Task(List<Loaded> posts, PadChecks.Site site, List<Candidate> stock, Objective objective) {
        this(posts, site, stock, objective, false);
    }

    public Task {
        posts = List.copyOf(posts);
        stock = stock.stream().sorted(objective.bestFirst()).toList();
    }

    /** The same, with calculation records or without. */
    public Task telling(boolean records) {
        return new Task(posts, site, stock, objective, records);
    }

    Task with(List<Loaded> others) {
        return new Task(others, site, stock, objective, working);
    }

    /** Distance to the nearest other post (m), infinite where there is none. Any of them may come to stand on a slab. */
    double nearest(Loaded post) {
        double nearest = Double.POSITIVE_INFINITY;
        for (Loaded other : posts) {
            nearest = other == post ? nearest : Math.min(nearest, post.apart(other));
        }
        return nearest;
    }
}
