package dev.underprop.engine.plan;

/** What a joist sits on or hangs in at a bearing, or a girder at a pier, as the plan declares it. */
public sealed interface Seat {

    /** The plan says nothing. */
    record Undeclared() implements Seat {}

    /**
     * Held by a hanger, ledger or bracket of known strength.
     *
     * @param by what it is, and who says what it carries
     * @param load allowable, of each joist or of the girder (N), positive
     */
    record Hung(String by, double load) implements Seat {
        public Hung {
            Sense.positive(load, "allowable load of a seat");
        }
    }

    /**
     * Flat on something.
     *
     * @param on what
     * @param by who says so
     * @param pressure allowable on its surface (Pa), positive, NaN where the plan does not state it
     */
    record Flat(Surface on, String by, double pressure) implements Seat {
        public Flat {
            if (!Double.isNaN(pressure)) {
                Sense.positive(pressure, "allowable pressure of a seat");
            }
        }
    }

    /** What lies under a flat seat. */
    enum Surface {
        WOOD,
        METAL,
        MASONRY,
        CONCRETE,
        /** A wood sill that itself lies on masonry or concrete. */
        SILL_ON_MASONRY
    }
}
