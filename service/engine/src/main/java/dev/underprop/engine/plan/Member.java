package dev.underprop.engine.plan;

import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.section.RectangularSection;

/**
 * A timber member of one or more equal plies standing on edge.
 *
 * @param label as the plan writes it, for messages: {@code 3-2x10 Hem-Fir No.2}
 * @param ply section of one ply
 * @param plies number of plies, at least 1
 * @param grade species and grade with reference values
 * @param nominal whether the section is a dressed size of the catalogue (false: measured)
 * @param moisture service condition as stated
 * @param weight own weight (N/m), not negative
 * @param details where the grade comes from, what is left of the section, how the wood was treated
 */
public record Member(
        String label,
        RectangularSection ply,
        int plies,
        WoodGrade grade,
        boolean nominal,
        Moisture moisture,
        double weight,
        Details details) {

    /** A member of stamped grade and full section, of whose treatment nothing is said. */
    public Member(
            String label,
            RectangularSection ply,
            int plies,
            WoodGrade grade,
            boolean nominal,
            Moisture moisture,
            double weight) {
        this(label, ply, plies, grade, nominal, moisture, weight, Details.PLAIN);
    }

    /**
     * What else is known of the timber.
     *
     * @param origin where the grade comes from
     * @param section what is left of the section
     * @param treatment how the wood was treated
     */
    public record Details(Origin origin, Remaining section, Treated treatment) {
        /** Stamped, whole, nothing said of treatment. */
        public static final Details PLAIN = new Details(new Stamped(), new Whole(), Treated.UNSTATED);
    }

    /** Where a grade comes from. */
    public sealed interface Origin {}

    /** Read on the timber. */
    public record Stamped() implements Origin {}

    /**
     * Assumed.
     *
     * @param by by whom
     */
    public record Assumed(String by) implements Origin {}

    /** What is left of a section. */
    public sealed interface Remaining {}

    /** All of it. */
    public record Whole() implements Remaining {}

    /**
     * Less, after notches, holes or decay: {@link Member#ply} is what is left.
     *
     * @param gross the section as it once was
     * @param by who measured it, and where
     */
    public record Reduced(RectangularSection gross, String by) implements Remaining {}

    /** What a plan says of treatment. */
    public enum Treated {
        UNSTATED,
        UNTREATED,
        NOT_INCISED,
        INCISED,
        INCISING_UNSTATED,
        FIRE_RETARDANT
    }

    /** The service condition a plan states. */
    public enum Moisture {
        DRY,
        WET,
        UNSTATED
    }

    public Member {
        if (plies < 1) {
            throw new IllegalArgumentException("a member needs at least one ply");
        }
        Sense.notNegative(weight, "weight");
    }

    /** Width over all plies (m). */
    public double breadth() {
        return ply.breadth() * plies;
    }

    /** The section that was graded: what is left of it may be smaller. */
    public RectangularSection graded() {
        return details.section() instanceof Reduced reduced ? reduced.gross() : ply;
    }

    /** Depth (m). */
    public double depth() {
        return ply.depth();
    }
}
