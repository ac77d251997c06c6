package dev.underprop.engine.check;

/**
 * Which of the ways in which things may really be a case belongs to. In words, for people and answers alike.
 *
 * @param history whether the shores took no load until something moved it there, or their share from the start
 * @param posts how stiff posts and ground are taken
 * @param fitUp which post is out of line and which way, empty when none is
 * @param fastenings whether what holds down holds, or is released
 */
public record Bound(String history, String posts, String fitUp, String fastenings) {

    /** In no particular way. */
    public static final Bound NONE = new Bound("", "", "", "");
}
