package dev.underprop.engine.clause.irc2021;

import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/** Section R502.6: bearing of joists, beams and girders. */
public final class SectionR502_6 {

    private static final double INCH = 0.0254;

    private static final Citation BEARING = Citation.read("IRC", "2021", "R502.6");

    private SectionR502_6() {}

    /** What a joist, beam or girder rests on; with a wood sill on masonry it is the masonry that counts. */
    public enum Seat {
        WOOD_OR_METAL(1.5 * INCH),
        MASONRY_OR_CONCRETE(3 * INCH);

        private final double length;

        Seat(double length) {
            this.length = length;
        }
    }

    /** Least length of bearing along the member (m). */
    public static Cited leastBearing(Seat seat) {
        return new Cited(seat.length, "least bearing", BEARING);
    }
}
