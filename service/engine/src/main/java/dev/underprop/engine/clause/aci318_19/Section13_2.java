package dev.underprop.engine.clause.aci318_19;

import dev.underprop.engine.standard.Admissible;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 13.2.7: where a footing is cut to find its moment and its shear. */
public final class Section13_2 {

    private static final Citation STEEL_BASE = Citation.remembered("ACI", "318-19", "Table 13.2.7.1, steel base plate");

    private Section13_2() {}

    /**
     * Size (m) between the critical sections under a steel base plate: halfway between the column's face and the plate's
     * edge.
     *
     * @param plate size of the plate (m), positive
     * @param column size of the column in the same direction (m), not negative; 0 where it is not known, on the safe side
     */
    public static Cited underPlate(double plate, double column) {
        double size = (Admissible.positive(plate, "plate") + Admissible.notNegative(column, "column")) / 2;
        return new Cited(size, "loaded size", STEEL_BASE);
    }
}
