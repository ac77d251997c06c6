package dev.underprop.engine.lift;

/** Why a request does not fit its plan. */
public sealed interface Misfit {

    /**
     * A surveyed point does not lie on the floor.
     *
     * @param point its index
     */
    record OffFloor(int point) implements Misfit {}

    /**
     * A post is asked to move, and there is no level on the line of its shore at it or on both sides of it.
     *
     * @param post counted over all shores
     * @param name in the plan's names
     * @param reading whether it is the readings that are missing
     */
    record NoLevel(int post, String name, boolean reading) implements Misfit {}

    /**
     * A post is to be raised or let down, posts are lifted by jacks, and none stands beside it.
     *
     * @param post counted over all shores
     * @param name in the plan's names
     */
    record NoJack(int post, String name) implements Misfit {}

    /**
     * A jack does not stand under the beam of its post's shore.
     *
     * @param jack its index
     * @param name in the plan's names
     */
    record JackOffBeam(int jack, String name) implements Misfit {}

    /**
     * A jack stands where a post or another jack does, or its pad lies over the pad of a post.
     *
     * @param jack its index
     * @param name in the plan's names
     * @param post what is in its way, in the plan's names: a post, or another jack
     */
    record JackInTheWay(int jack, String name, String post) implements Misfit {}

    /** No point has a target on the line of any shore, so that no post is asked to move. */
    record NoTarget() implements Misfit {}

    /**
     * The smallest turn of a post's screw moves it by more than a turn or a stage may.
     *
     * @param post counted over all shores
     * @param name in the plan's names
     * @param step how far its smallest turn moves it (m)
     * @param allowed the lesser of the limits of a turn and of a stage (m)
     */
    record TooCoarse(int post, String name, double step, double allowed) implements Misfit {}
}
