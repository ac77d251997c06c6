package dev.underprop.engine.clause.nds2018;

/** Sustained exposure to heat: the columns of NDS 2018 Table 2.3.3, in degrees Fahrenheit (37.8, 51.7, 65.6 °C). */
public enum Temperature {
    /** At or below 100 °F. */
    ORDINARY,
    /** Above 100 °F, at or below 125 °F. */
    WARM,
    /** Above 125 °F, at or below 150 °F. */
    HOT
}
