package dev.underprop.engine.material;

import dev.underprop.engine.standard.Citation;

/**
 * Reference design values of a species group and grade of sawn lumber.
 *
 * @param species species group
 * @param grade grade
 * @param bending Fb (Pa)
 * @param shear Fv (Pa)
 * @param bearing compression perpendicular to grain (Pa)
 * @param compression compression parallel to grain, Fc (Pa)
 * @param modulus E (Pa)
 * @param modulusMin Emin for stability (Pa)
 * @param gravity specific gravity G
 * @param sizes which rule adjusts for size
 * @param citation where the values stand
 */
public record WoodGrade(
        String species,
        String grade,
        double bending,
        double shear,
        double bearing,
        double compression,
        double modulus,
        double modulusMin,
        double gravity,
        Sizes sizes,
        Citation citation) {

    /** Which rule adjusts reference values for size. */
    public enum Sizes {
        /** Dimension lumber whose values are multiplied by a size factor. */
        SIZE_FACTOR,
        /** The stud grade, whose size factors are its own. */
        STUD,
        /** Values already tabulated for the member's width. */
        IN_THE_VALUES
    }

    public WoodGrade {
        require(bending, shear, bearing, compression, modulus, modulusMin, gravity);
    }

    private static void require(double... values) {
        for (double value : values) {
            if (!(value > 0) || Double.isInfinite(value)) {
                throw new IllegalArgumentException("reference values must be positive and finite");
            }
        }
    }
}
