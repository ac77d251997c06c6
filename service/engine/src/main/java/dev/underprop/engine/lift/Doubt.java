package dev.underprop.engine.lift;

import java.util.List;

/**
 * One way to understand what was read: how far the heads of posts are lower than their screws would have them.
 *
 * @param words what is taken, empty where nothing is in doubt
 * @param lower by post (m), empty where nothing is in doubt
 * @param read whether it is what the readings say, so that levels are expected by it
 */
record Doubt(String words, List<Double> lower, boolean read) {

    /** Heads are where their screws have them. */
    static final Doubt NONE = new Doubt("", List.of(), true);

    /** Lower than this nothing reaches the beam (m). */
    static final double NOTHING_CARRIED = 1;

    Doubt {
        lower = List.copyOf(lower);
    }

    double lower(int post) {
        return lower.isEmpty() ? 0 : lower.get(post);
    }
}
