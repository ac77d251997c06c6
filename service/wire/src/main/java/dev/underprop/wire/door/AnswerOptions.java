package dev.underprop.wire.door;

import dev.underprop.wire.quantity.UnitSystem;

/**
 * How an answer is to be written; not part of the plan, so it does not change the plan's digest.
 *
 * @param units unit system of the results
 * @param detail how much is said
 * @param working whether every check carries its calculation record
 */
public record AnswerOptions(UnitSystem units, Detail detail, boolean working) {

    /** An answer without calculation records. */
    public AnswerOptions(UnitSystem units, Detail detail) {
        this(units, detail, false);
    }

    /** How much an answer says. */
    public enum Detail {
        /** What a brief record tells: verdict, digests, and the numbers of the worst place of each check; no words but cautions. */
        BRIEF,
        /** The worst place of each check. */
        COMPACT,
        /** Every place of each check, and every combination contact by contact. */
        FULL
    }

    /** United States units, compact. */
    public static final AnswerOptions USUAL = new AnswerOptions(UnitSystem.US, Detail.COMPACT);
}
