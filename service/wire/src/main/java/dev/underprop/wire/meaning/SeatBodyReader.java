package dev.underprop.wire.meaning;

import dev.underprop.engine.plan.Seat;
import dev.underprop.wire.fault.Messages;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads what carries a seat. After a fault was reported, nothing is declared. */
final class SeatBodyReader {

    private static final List<String> SURFACES = List.of("wood", "metal", "masonry", "concrete", "sill on masonry");

    private SeatBodyReader() {}

    static Seat read(dev.underprop.api.model.@Nullable Seat seat, Spot at) {
        if (seat == null) {
            return new Seat.Undeclared();
        }
        boolean said = at.text("by", seat.getBy()).said();
        Text load = at.text("load", seat.getLoad());
        Text surface = at.text("surface", seat.getSurface());
        Text pressure = at.text("pressure", seat.getPressure());
        double force = load.quantityOr(Range.CAPACITY, Double.NaN);
        double stress = pressure.quantityOr(Range.SEAT_PRESSURE, Double.NaN);
        if (load.given() && (surface.given() || pressure.given())) {
            at.report(Messages.SEAT_TWO_WAYS, "");
            return new Seat.Undeclared();
        }
        if (load.given()) {
            return said && !Double.isNaN(force) ? new Seat.Hung(seat.getBy(), force) : new Seat.Undeclared();
        }
        if (pressure.given() && !surface.given()) {
            surface.spot().report(Messages.MEMBER_MISSING, "", "surface");
            return new Seat.Undeclared();
        }
        return surface.given() ? flat(surface, seat.getBy(), stress) : unstated(at);
    }

    private static Seat flat(Text surface, String by, double pressure) {
        Optional<String> word = surface.choice(SURFACES);
        return word.isPresent() ? new Seat.Flat(surface(word.get()), by, pressure) : new Seat.Undeclared();
    }

    private static Seat.Surface surface(String word) {
        return Seat.Surface.valueOf(word.toUpperCase(Locale.ROOT).replace(' ', '_'));
    }

    private static Seat unstated(Spot at) {
        at.report(Messages.SEAT_UNSTATED, "");
        return new Seat.Undeclared();
    }
}
