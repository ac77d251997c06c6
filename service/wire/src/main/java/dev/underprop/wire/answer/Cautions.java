package dev.underprop.wire.answer;

import java.util.List;

/** What stands over every use of an answer. */
public final class Cautions {

    /** The cautions, in order. */
    public static final List<String> ALL = List.of(
            "A calculation aid. The local building code and a licensed engineer decide.",
            "Nobody under or above the bay while a screw is turned or a bearing is taken out.",
            "What was not checked stands first in this answer. Not checked is never a pass.");

    private Cautions() {}
}
