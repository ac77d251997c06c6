package dev.underprop.engine.soil;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** From a plate loaded on sand to a base on the same sand. */
public final class PlateTest {

    private static final Citation RULE = Citation.read(
            "Das, Principles of Geotechnical Engineering",
            "companion edition",
            "16.6 and 16.7, field load tests on sand");

    private PlateTest() {}

    /** Settlement of a base (m) under the pressure under which the plate settles by so much (m). */
    public static Cited settlement(double plate, double plateBreadth, double breadth) {
        double factor = 2 * breadth / (breadth + plateBreadth);
        return new Cited(plate * factor * factor, "S", RULE);
    }

    /** Ultimate pressure (Pa) of a base, in proportion to breadth. */
    public static Cited ultimate(double plate, double plateBreadth, double breadth) {
        return new Cited(plate * breadth / plateBreadth, "qu", RULE);
    }

    /** Difference of settlement over distance. */
    public static Cited distortion(double one, double other, double apart) {
        return new Cited(
                Math.abs(one - other) / apart,
                "beta",
                Citation.remembered("common practice, no source", "", "difference of settlement over distance"));
    }
}
