package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;
import java.util.Locale;

/**
 * Section 12.5: where lag screws may stand in softwood. A force may act either way, so every edge and end counts as loaded.
 * The tables tell rows from screws in a row; here one least distance stands for both and must satisfy the stricter.
 */
public final class Section12_5 {

    private static final Citation END = Citation.remembered("NDS", "2018", "12.5.1.1(a) and Table 12.5.1A");
    private static final Citation EDGE = Citation.remembered("NDS", "2018", "Table 12.5.1C");
    private static final Citation SPACING = Citation.remembered("NDS", "2018", "Tables 12.5.1B and 12.5.1D");
    private static final Citation SHRINKAGE = Citation.remembered("NDS", "2018", "12.5.1.3");

    /** Rows further apart on one plate are split off by shrinkage (m). */
    private static final double WIDEST = 5 * Units.INCH;

    private Section12_5() {}

    /**
     * End distance factor CΔ: distance over that which gives the whole value, refused below half of it.
     *
     * @param diameter nominal (m), positive
     * @param end distance (m), positive
     */
    public static Outcome end(Grain grain, double diameter, double end) {
        double whole = (grain == Grain.PARALLEL ? 7 : 4) * Admissible.positive(diameter, "diameter");
        double part = Admissible.positive(end, "end distance") / whole;
        return Units.atLeast(part, 0.5)
                ? Outcome.of(Math.min(1, part), "CΔ", END)
                : new Outcome.Refused(tooNear("the end of the timber", end, whole / 2), END);
    }

    /**
     * Edge distance, 1 where it is kept. Below it there is no value.
     *
     * @param diameter nominal (m), positive
     * @param length in the wood (m), positive
     * @param edge distance (m), positive
     * @param rows greatest distance between two rows along the grain (m), 0 for a single one
     */
    public static Outcome edge(Grain grain, double diameter, double length, double edge, double rows) {
        Admissible.notNegative(rows, "distance of rows");
        double least = (grain == Grain.PARALLEL ? 1.5 : 4) * Admissible.positive(diameter, "diameter");
        boolean slender = !Units.atMost(Admissible.positive(length, "length"), 6 * diameter);
        double wanted = slender ? Math.max(least, rows / 2) : least;
        if (!Units.atLeast(Admissible.positive(edge, "edge distance"), wanted)) {
            return new Outcome.Refused(tooNear("an edge", edge, wanted), EDGE);
        }
        return Units.atMost(rows, WIDEST)
                ? Outcome.of(1, "CΔ", EDGE)
                : new Outcome.Refused(
                        "lag screws on one plate may be more than 5 in apart across the grain", SHRINKAGE);
    }

    /**
     * Distance between screws, 1 at five diameters and more. Below there is no value here.
     *
     * @param diameter nominal (m), positive
     * @param spacing least distance of two screws (m), positive
     */
    public static Outcome spacing(double diameter, double spacing) {
        double wanted = 5 * Admissible.positive(diameter, "diameter");
        return Units.atLeast(Admissible.positive(spacing, "spacing"), wanted)
                ? Outcome.of(1, "CΔ", SPACING)
                : new Outcome.Refused(tooNear("each other", spacing, wanted), SPACING);
    }

    private static String tooNear(String what, double got, double least) {
        return String.format(
                Locale.ROOT,
                "lag screws stand %.2f in from %s, not %.2f in",
                got / Units.INCH,
                what,
                least / Units.INCH);
    }
}
