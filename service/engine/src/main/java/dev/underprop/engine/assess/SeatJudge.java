package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.irc2021.SectionR502_6;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.Seat;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;

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

    /** As {@link #strength(Bearing, AcrossGrain, Working)}, without a record. @param area that it presses on (m²), positive */
    static Finding strength(Bearing bearing, double load, double area) {
        return strength(bearing, new AcrossGrain(load, area, 1), Working.OFF);
    }

    /**
     * A joist at its bearing.
     *
     * @param pressed what it brings, and where it presses
     */
    static Finding strength(Bearing bearing, AcrossGrain pressed, Working working) {
        if (!(bearing.body() instanceof Girder girder) || bearing.seat() instanceof Seat.Hung) {
            return strength(bearing.seat(), pressed, working);
        }
        Working girders = working.branch();
        Working stated = working.branch();
        Finding across = pressed.on(girder.member(), girders);
        boolean flat = bearing.seat() instanceof Seat.Flat seat && !Double.isNaN(seat.pressure());
        Finding worst = flat ? Worse.of(across, strength(bearing.seat(), pressed, stated)) : across;
        working.adopt(worst == across ? girders : stated);
        return worst;
    }

    /** As {@link #strength(Bearing, AcrossGrain, Working)}, of a seat that is no girder. */
    static Finding strength(Seat seat, AcrossGrain pressed, Working working) {
        if (seat instanceof Seat.Hung hung) {
            double load = working.analysis("P", "greatest load there", Dimension.FORCE, pressed.load());
            double holds = working.plan("Ph", "what the hanger is said to carry", Dimension.FORCE, hung.load());
            return working.compared("P", "Ph", new Judged(Measure.FORCE, load, holds));
        }
        if (seat instanceof Seat.Flat flat) {
            return Double.isNaN(flat.pressure())
                    ? new CheckResult.NotChecked("what pressure the seat takes is not stated (declare: pressure)")
                    : pressed.against(flat.pressure(), working);
        }
        return new CheckResult.NotChecked("what carries it there is not declared (declare: seat)");
    }

    /**
     * A joist at its bearing.
     *
     * @param length of the seat under it (m), not negative
     */
    static Finding length(Bearing bearing, double length, Working working) {
        boolean onGirder = bearing.body() instanceof Girder && !(bearing.seat() instanceof Seat.Hung);
        return onGirder
                ? length(SectionR502_6.Seat.WOOD_OR_METAL, length, working)
                : length(bearing.seat(), length, working);
    }

    /** As {@link #length(Bearing, double, Working)}, of a seat that is no girder. */
    static Finding length(Seat seat, double length, Working working) {
        if (seat instanceof Seat.Hung) {
            return new CheckResult.NotApplicable("it hangs in something of stated strength");
        }
        if (seat instanceof Seat.Flat flat) {
            return length(surface(flat.on()), length, working);
        }
        return new CheckResult.NotChecked(
                "whether it sits on wood, metal, masonry or concrete is not declared (declare: seat)");
    }

    private static Finding length(SectionR502_6.Seat surface, double length, Working working) {
        Cited least = SectionR502_6.leastBearing(surface);
        double wanted = working.rule("lmin", least, "least length of the seat", Dimension.LENGTH, "");
        double there = working.plan("lb", "length of the seat", Dimension.LENGTH, Math.max(0, length));
        return working.compared("lmin", "lb", new Judged(Measure.DEFLECTION, wanted, there));
    }

    private static SectionR502_6.Seat surface(Seat.Surface on) {
        return switch (on) {
            case WOOD, METAL -> SectionR502_6.Seat.WOOD_OR_METAL;
            case MASONRY, CONCRETE, SILL_ON_MASONRY -> SectionR502_6.Seat.MASONRY_OR_CONCRETE;
        };
    }
}
