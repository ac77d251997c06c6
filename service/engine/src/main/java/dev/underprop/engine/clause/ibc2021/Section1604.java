package dev.underprop.engine.clause.ibc2021;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section 1604: serviceability. */
public final class Section1604 {

    private static final Citation FLOORS = Citation.remembered("IBC", "2021", "Table 1604.3, floor members");

    private Section1604() {}

    /** Span divided by this is the deflection allowed to floor members under live load. */
    public static Cited floorLive() {
        return new Cited(360, "L/", FLOORS);
    }

    /** Span divided by this is the deflection allowed to floor members under dead and live load. */
    public static Cited floorTotal() {
        return new Cited(240, "L/", FLOORS);
    }
}
