package dev.underprop.engine.plan;

/**
 * Class of an adjustable telescopic steel prop by EN 1065, as marked on it.
 *
 * @param letter A to E
 * @param longest length at full extension (m), positive
 */
public record PropClass(Letter letter, double longest) implements PostType.Named {

    /** The class. */
    public enum Letter {
        A,
        B,
        C,
        D,
        E
    }

    public PropClass {
        Sense.positive(longest, "full extension");
    }

    /** As it is marked, such as {@code B35}: the class and the full extension in decimetres. */
    public String mark() {
        return letter.name() + StrictMath.round(longest * 10);
    }
}
