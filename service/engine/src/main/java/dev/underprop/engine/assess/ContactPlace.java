package dev.underprop.engine.assess;

/** Which contact of the plan a contact of the frame is; indices are those of the plan. */
public sealed interface ContactPlace {

    /** A joist on a bearing. */
    record OnBearing(int joist, int bearing) implements ContactPlace {}

    /** A joist on a shore beam. */
    record OnShore(int joist, int shore) implements ContactPlace {}

    /** A girder on a pier; the girder is a bearing. */
    record OnPier(int bearing, int pier) implements ContactPlace {}

    /** A shore beam on a post. */
    record OnPost(int shore, int post) implements ContactPlace {}
}
