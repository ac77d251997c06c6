package dev.underprop.engine.clause.irc2021;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import java.util.Arrays;
import java.util.Optional;

/**
 * Table R602.3(1), built-up girders and beams of nominal 2 in layers: the two kinds of nail, in rows at top and bottom,
 * staggered. A nail that is at least as thick and as long as a listed one counts as that one.
 */
public enum GirderNail {
    /** 4 in by 0.192 in. */
    TWENTY_PENNY_COMMON(0.192, 4, 32, 2, false),
    /** 3 in by 0.128 in. */
    TEN_PENNY_BOX(0.128, 3, 24, 3, true);

    private static final double INCH = 0.0254;

    /** Conversion of inches leaves about 1e-15; nothing that could be measured is eased. */
    private static final double ROUNDING = 1e-12;

    /** Dressed thickness of a nominal 2 in layer (m). */
    private static final double LAYER = 1.5 * INCH;

    /** What a tape can tell (m), 1/16 in; common practice, no source. */
    private static final double TAPE = INCH / 16;

    /** Rows of nails, at top and bottom. */
    public static final int ROWS = 2;

    /** Where the rule stands. */
    public static final Citation RULE =
            Citation.remembered("IRC", "2021", "Table R602.3(1), built-up girders and beams, 2-inch lumber layers");

    private final double diameter;
    private final double length;
    private final double spacing;
    private final int ends;
    private final boolean oppositeSides;

    GirderNail(double diameter, double length, double spacing, int ends, boolean oppositeSides) {
        this.diameter = diameter * INCH;
        this.length = length * INCH;
        this.spacing = spacing * INCH;
        this.ends = ends;
        this.oppositeSides = oppositeSides;
    }

    /**
     * The stoutest row of the table that a nail fulfils, if it fulfils one.
     *
     * @param diameter of the shank (m), positive
     * @param length (m), positive
     */
    public static Optional<GirderNail> of(double diameter, double length) {
        Admissible.positive(diameter, "nail diameter");
        Admissible.positive(length, "nail length");
        return Arrays.stream(values())
                .filter(nail -> diameter >= nail.diameter * (1 - ROUNDING) && length >= nail.length * (1 - ROUNDING))
                .findFirst();
    }

    /** Whether layers of a thickness (m) are those the table speaks of, nominal 2 in dressed. */
    public static boolean layers(double thickness) {
        return Math.abs(Admissible.positive(thickness, "thickness") - LAYER) <= TAPE;
    }

    /** Greatest distance of nails in one row (m). */
    public Cited spacing() {
        return new Cited(spacing, "nail spacing", RULE);
    }

    /** Whether a distance of nails (m) keeps to the table. */
    public boolean allows(double apart) {
        return Admissible.positive(apart, "nail spacing") <= spacing * (1 + ROUNDING);
    }

    /** Nails at ends and at each splice. */
    public Cited atEnds() {
        return new Cited(ends, "nails at ends", RULE);
    }

    /** Whether the nails are to be driven from opposite sides. */
    public boolean oppositeSides() {
        return oppositeSides;
    }
}
