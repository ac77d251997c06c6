package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Outcome;

/**
 * NDS Supplement, chapter 4: the adjustment factors that stand beside the reference values, each taken from the table
 * that the grade belongs to. A built-up beam takes the factors of one ply.
 */
public final class Supplement4 {

    /** Stands in where a design value has no size factor and no exception looks at it. */
    private static final Cited NO_SIZE = new Cited(1, "CF", Supplement4A.WET);

    private Supplement4() {}

    /**
     * Size factor CF, for bending, tension and compression parallel to grain.
     *
     * @param value which design value; CF of another is an {@link IllegalArgumentException}
     * @param grade tells the table
     * @param ply section of one ply, loaded on its narrow face
     * @return CF, or refused where the table does not cover the size
     */
    public static Outcome size(DesignValue value, WoodGrade grade, RectangularSection ply) {
        if (!value.factors().contains("CF")) {
            throw new IllegalArgumentException(value.symbol() + " has no size factor");
        }
        return switch (grade.sizes()) {
            case WESTERN_DIMENSION -> Supplement4A.size(value, ply);
            case WESTERN_STUD -> Supplement4A.studSize(value, ply);
            case SOUTHERN_PINE -> Supplement4B.size(value, ply);
            case TIMBER_4D -> Supplement4D.size(value, ply);
        };
    }

    /**
     * Wet service factor CM of a design value with a size factor; 1 in dry service.
     *
     * @param value which design value
     * @param grade tells the table, and the reference value for the exceptions of dimension lumber
     * @param size CF of the same design value, which decides the exceptions
     */
    public static Cited wetService(DesignValue value, WoodGrade grade, Cited size, Moisture moisture) {
        boolean timber = grade.sizes() == WoodGrade.Sizes.TIMBER_4D;
        Citation table = timber ? Supplement4D.WET : Supplement4A.WET;
        if (moisture == Moisture.DRY) {
            return new Cited(1, "CM", table);
        }
        double factor = timber ? Supplement4D.wet(value) : Supplement4A.wet(value, value.of(grade) * size.value());
        return new Cited(factor, "CM", table);
    }

    /**
     * Wet service factor CM of a design value without a size factor; 1 in dry service.
     *
     * @throws IllegalArgumentException for a design value that has a size factor
     */
    public static Cited wetService(DesignValue value, WoodGrade grade, Moisture moisture) {
        if (value.factors().contains("CF")) {
            throw new IllegalArgumentException(value.symbol() + " needs its size factor first");
        }
        return wetService(value, grade, NO_SIZE, moisture);
    }

    /**
     * Flat use factor Cfu for bending of dimension lumber loaded on its wide face.
     *
     * @param grade tells the table
     * @param thickness of the board, now its depth (m), positive
     * @param width of the board, now its breadth (m), positive
     * @return Cfu, or refused where the table does not cover the size, and for timbers
     */
    public static Outcome flatUse(WoodGrade grade, double thickness, double width) {
        return grade.sizes() == WoodGrade.Sizes.TIMBER_4D
                ? new Outcome.Refused("flat use of timbers is not covered here", Supplement4D.SIZE)
                : Supplement4A.flatUse(thickness, width);
    }

    /** Flat use factor Cfu of a member loaded on its narrow face: 1. */
    public static Cited onEdge() {
        return new Cited(1, "Cfu", Supplement4A.FLAT);
    }
}
