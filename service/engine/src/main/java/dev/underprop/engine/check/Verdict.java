package dev.underprop.engine.check;

/** What became of one check. Ordered from best to worst. */
public enum Verdict {
    /** The check has no object here; the reason is given. */
    NOT_APPLICABLE,
    /** Demand does not exceed capacity. */
    PASS,
    /** Something needed is missing. Never a pass. */
    NOT_CHECKED,
    /** Demand exceeds capacity, or there is no capacity. */
    FAIL;

    /** The worse of two. */
    public Verdict worse(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
