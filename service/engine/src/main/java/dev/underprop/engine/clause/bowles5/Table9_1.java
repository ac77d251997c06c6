package dev.underprop.engine.clause.bowles5;

import dev.underprop.engine.standard.Citation;

/** Table 9-1: range of the modulus of subgrade reaction, the pressure under a footing over its settlement (N/m³). */
public final class Table9_1 {

    private static final double KILO = 1000;

    private Table9_1() {}

    /** The rows of the table. */
    public enum Row {
        LOOSE_SAND("loose sand", 4800, 16_000),
        MEDIUM_DENSE_SAND("medium dense sand", 9600, 80_000),
        DENSE_SAND("dense sand", 64_000, 128_000),
        CLAYEY_MEDIUM_DENSE_SAND("clayey medium dense sand", 32_000, 80_000),
        SILTY_MEDIUM_DENSE_SAND("silty medium dense sand", 24_000, 48_000),
        SOFT_CLAY("clay allowing at most 200 kPa", 12_000, 24_000),
        CLAY("clay allowing 200 to 800 kPa", 24_000, 48_000),
        STIFF_CLAY("clay allowing more than 800 kPa", 48_000, Double.POSITIVE_INFINITY);

        private final String title;
        private final double from;
        private final double to;

        Row(String title, double from, double to) {
            this.title = title;
            this.from = from;
            this.to = to;
        }

        /** The ground as the table names it. */
        public String title() {
            return title;
        }

        /** Least modulus (N/m³). */
        public double from() {
            return from * KILO;
        }

        /** Greatest modulus (N/m³); infinite where the table gives no end. */
        public double to() {
            return to * KILO;
        }
    }

    /** Where the table stands. */
    public static Citation citation() {
        return Citation.read(
                "Bowles, Foundation Analysis and Design", "5th edition", "Table 9-1 (read in a public copy)");
    }
}
