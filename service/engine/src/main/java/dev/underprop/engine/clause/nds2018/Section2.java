package dev.underprop.engine.clause.nds2018;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 2: design values. */
public final class Section2 {

    private static final Citation TABLE_2_3_2 = Citation.read("NDS", "2018", "Table 2.3.2");

    private Section2() {}

    /** How long the shortest load of a combination lasts, over the life of a structure. */
    public enum Duration {
        /** Dead load. */
        PERMANENT(0.9),
        /** Floor live load. */
        TEN_YEARS(1.0),
        /** Snow. */
        TWO_MONTHS(1.15);

        private final double factor;

        Duration(double factor) {
            this.factor = factor;
        }
    }

    /**
     * Load duration factor CD, Table 2.3.2. Factors above 1.15 (construction, wind, impact) need a stated reason and are
     * not offered here. Never applied to compression perpendicular to grain or to E.
     */
    public static Cited loadDuration(Duration duration) {
        return new Cited(duration.factor, "CD", TABLE_2_3_2);
    }
}
