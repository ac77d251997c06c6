package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.clause.irc2021.SectionR502_6;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.Seat;
import dev.underprop.engine.standard.Citation;

/**
 * What carries a joist at its bearing, or a girder at its pier: a hanger or ledger against what it is said to carry, a surface
 * against the pressure it is said to take, a girder against its own value across the grain; and whether the seat is long
 * enough. Nothing below that surface is looked at.
 */
final class SeatJudge {

    static final Citation STRENGTH = Citation.remembered(
            "common practice, no source",
            "",
            "greatest load against what the plan says the seat carries; a girder by NDS" + " 2018, 3.10.2");

    static final Citation LENGTH =
            SectionR502_6.leastBearing(SectionR502_6.Seat.WOOD_OR_METAL).citation();

    private SeatJudge() {}

    /**
     * A joist at its bearing.
     *
     * @param load greatest that it brings (N), not negative
     * @param area that it presses on (m²), positive
     */
    static Finding strength(Bearing bearing, double load, double area) {
        if (!(bearing.body() instanceof Girder girder) || bearing.seat() instanceof Seat.Hung) {
            return strength(bearing.seat(), load, area);
        }
        Finding across = new Judged(Measure.STRESS, load / area, new TimberCapacity(girder.member(), 1).bearing());
        boolean stated = bearing.seat() instanceof Seat.Flat flat && !Double.isNaN(flat.pressure());
        return stated ? Worse.of(across, strength(bearing.seat(), load, area)) : across;
    }

    /** As {@link #strength(Bearing, double, double)}, of a seat that is no girder. */
    static Finding strength(Seat seat, double load, double area) {
        if (seat instanceof Seat.Hung hung) {
            return new Judged(Measure.FORCE, load, hung.load());
        }
        if (seat instanceof Seat.Flat flat) {
            return Double.isNaN(flat.pressure())
                    ? new CheckResult.NotChecked("what pressure the seat takes is not stated")
                    : new Judged(Measure.STRESS, load / area, flat.pressure());
        }
        return new CheckResult.NotChecked("what carries it there is not declared");
    }

    /**
     * A joist at its bearing.
     *
     * @param length of the seat under it (m), not negative
     */
    static Finding length(Bearing bearing, double length) {
        boolean onGirder = bearing.body() instanceof Girder && !(bearing.seat() instanceof Seat.Hung);
        return onGirder ? length(SectionR502_6.Seat.WOOD_OR_METAL, length) : length(bearing.seat(), length);
    }

    /** As {@link #length(Bearing, double)}, of a seat that is no girder. */
    static Finding length(Seat seat, double length) {
        if (seat instanceof Seat.Hung) {
            return new CheckResult.NotApplicable("it hangs in something of stated strength");
        }
        if (seat instanceof Seat.Flat flat) {
            return length(surface(flat.on()), length);
        }
        return new CheckResult.NotChecked("whether it sits on wood, metal, masonry or concrete is not declared");
    }

    private static Finding length(SectionR502_6.Seat surface, double length) {
        return new Judged(
                Measure.DEFLECTION, SectionR502_6.leastBearing(surface).value(), Math.max(0, length));
    }

    private static SectionR502_6.Seat surface(Seat.Surface on) {
        return switch (on) {
            case WOOD, METAL -> SectionR502_6.Seat.WOOD_OR_METAL;
            case MASONRY, CONCRETE, SILL_ON_MASONRY -> SectionR502_6.Seat.MASONRY_OR_CONCRETE;
        };
    }
}
