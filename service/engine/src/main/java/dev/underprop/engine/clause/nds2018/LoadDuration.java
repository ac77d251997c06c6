package dev.underprop.engine.clause.nds2018;

/** How long a load acts at full value, added up over the life of the structure: the rows of NDS 2018 Table 2.3.2. */
public enum LoadDuration {
    /** Dead load. */
    PERMANENT(0.9),
    /** Floor live load. */
    TEN_YEARS(1.0),
    /** Snow. */
    TWO_MONTHS(1.15),
    /** Construction and roof live load. */
    SEVEN_DAYS(1.25),
    /** Wind and earthquake. */
    TEN_MINUTES(1.6),
    /** Impact; not for wood treated with water-borne preservatives or fire retardants (footnote 2, from memory). */
    IMPACT(2.0);

    private final double factor;

    LoadDuration(double factor) {
        this.factor = factor;
    }

    double factor() {
        return factor;
    }
}
