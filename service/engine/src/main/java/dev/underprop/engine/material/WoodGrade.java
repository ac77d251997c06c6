package dev.underprop.engine.material;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;

/**
 * Reference design values of a species group and grade of sawn lumber, before any adjustment.
 *
 * @param species species group
 * @param grade grade
 * @param bending Fb (Pa)
 * @param tension parallel to grain, Ft (Pa)
 * @param shear Fv (Pa)
 * @param bearing compression perpendicular to grain, Fc⊥ (Pa)
 * @param compression parallel to grain, Fc (Pa)
 * @param modulus E (Pa)
 * @param modulusMin Emin, for stability (Pa), not above E
 * @param gravity specific gravity G, oven-dry, below 1.5
 * @param sizes which table adjusts the values for size
 * @param citation where the values stand
 */
public record WoodGrade(
        String species,
        String grade,
        double bending,
        double tension,
        double shear,
        double bearing,
        double compression,
        double modulus,
        double modulusMin,
        double gravity,
        Sizes sizes,
        Citation citation) {

    /** Solid wood without any pores weighs 1.5 times as much as water, so no specific gravity reaches that. */
    private static final double WALL_GRAVITY = 1.5;

    /** Which table of the NDS Supplement adjusts reference values for size. */
    public enum Sizes {
        /** Table 4A: dimension lumber of all species but Southern Pine; values are multiplied by a size factor. */
        WESTERN_DIMENSION,
        /** Table 4A, stud grade, with size factors of its own. */
        WESTERN_STUD,
        /** Table 4B: Southern Pine dimension lumber, values already tabulated for the width. */
        SOUTHERN_PINE,
        /** Table 4D: timbers, 5 in by 5 in nominal and larger. */
        TIMBER_4D
    }

    public WoodGrade {
        if (species.isBlank() || grade.isBlank()) {
            throw new IllegalArgumentException("a grade names its species group and itself");
        }
        Admissible.positive(bending, "Fb");
        Admissible.positive(tension, "Ft");
        Admissible.positive(shear, "Fv");
        Admissible.positive(bearing, "Fc-perp");
        Admissible.positive(compression, "Fc");
        Admissible.positive(modulus, "E");
        Admissible.positive(modulusMin, "Emin");
        Admissible.positive(gravity, "G");
        if (modulusMin > modulus) {
            throw new IllegalArgumentException("Emin must not exceed E, got " + modulusMin + " and " + modulus);
        }
        if (gravity >= WALL_GRAVITY) {
            throw new IllegalArgumentException("G must be below 1.5, got " + gravity);
        }
    }

    /** Species and grade in one line. */
    public String label() {
        return species + " " + grade;
    }
}
