package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 11.3: adjustment factors of connections. */
public final class Section11_3 {

    private static final Citation WET = Citation.remembered("NDS", "2018", "Table 11.3.3, dowel-type, lateral");
    private static final Citation GROUP = Citation.remembered("NDS", "2018", "11.3.6, Equation 11.3-1");

    private Section11_3() {}

    /** Wet service factor CM for a sideways force on lag screws that were set in dry wood. */
    public static Cited wetService(Moisture moisture) {
        return new Cited(moisture == Moisture.DRY ? 1 : 0.7, "CM", WET);
    }

    /**
     * Group action factor Cg of one row of dowel-type fasteners between wood and a steel plate; 1 for a single one.
     *
     * @param count in the row, at least 1
     * @param diameter nominal (m), 1/4 in and more
     * @param spacing between neighbours in the row (m), positive
     * @param wood E·A of the timber (N), positive
     * @param steel E·A of the plate (N), positive
     */
    public static Cited groupAction(int count, double diameter, double spacing, double wood, double steel) {
        Admissible.positive(count, "count");
        Admissible.positive(diameter, "diameter");
        Admissible.positive(wood, "EA of the timber");
        Admissible.positive(steel, "EA of the plate");
        if (count == 1) {
            return new Cited(1, "Cg", GROUP);
        }
        double slip = 270_000 * StrictMath.pow(diameter / Units.INCH, 1.5) * Units.POUND / Units.INCH;
        double u = 1 + slip * Admissible.positive(spacing, "spacing") / 2 * (1 / wood + 1 / steel);
        double m = u - Math.sqrt(u * u - 1);
        double ratio = Math.min(wood / steel, steel / wood);
        double once = StrictMath.pow(m, count);
        double twice = once * once;
        double row = m * (1 - twice) / (count * ((1 + ratio * once) * (1 + m) - 1 + twice));
        return new Cited(row * (1 + ratio) / (1 - m), "Cg", GROUP);
    }
}
