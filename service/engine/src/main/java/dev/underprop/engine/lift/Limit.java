package dev.underprop.engine.lift;

/**
 * One thing that no turn may make worse than allowed.
 *
 * @param kind what it guards
 * @param place in the plan's names
 * @param allowed greatest value: a ratio, an opening (m), a slope or a force (N), by its kind
 */
public record Limit(Kind kind, String place, double allowed) {

    /** What limits guard. */
    public enum Kind {
        /** Load of a post over its strength at its height. */
        POST,
        /** Pressure under a pad over what the ground may take. */
        PAD,
        /** Bending or shear of a shore beam or girder. */
        BEAM,
        /** Bending or shear of a joist. */
        JOIST,
        /** Clear space at a contact that must stay closed (m). */
        CONTACT,
        /** Pull on a fastening (N). */
        TIE,
        /** Clear space over a post that was raised and is not fastened (m): no more than its own smallest turn closes. */
        SLACK,
        /** Change of slope between neighbours from as found. */
        SLOPE,
        /** Raise of a screw beyond what it can still be raised (m). */
        TRAVEL,
        /** Raise of a post (m). */
        TOTAL
    }

    /** Rounding of a value that counts as none, as part of it. */
    private static final double ROUNDING = 1e-9;

    /** Whether a value is beyond what is allowed. */
    boolean broken(double value) {
        return value > allowed * (1 + ROUNDING);
    }

    /** Whether a turn from one value to another is refused: beyond what is allowed, and worse than before. */
    boolean refuses(double before, double after) {
        return broken(after) && !(after <= before * (1 + ROUNDING));
    }

    /** The worse of two values: not known (NaN) where one of them is not, unless the other is beyond what is allowed. */
    double worse(double one, double other) {
        double worst = Math.max(one, other);
        double known = Double.isNaN(one) ? other : one;
        return Double.isNaN(worst) && broken(known) ? known : worst;
    }

    /** Part of what is allowed that is used; above 1 where broken. */
    double used(double value) {
        return value == 0 ? 0 : value / allowed;
    }
}
