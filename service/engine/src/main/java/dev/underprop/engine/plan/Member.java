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
 */
public record Member(
        String label,
        RectangularSection ply,
        int plies,
        WoodGrade grade,
        boolean nominal,
        Moisture moisture,
        double weight) {

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

    /** Depth (m). */
    public double depth() {
        return ply.depth();
    }
}
