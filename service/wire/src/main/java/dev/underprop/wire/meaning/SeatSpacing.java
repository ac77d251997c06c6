package dev.underprop.wire.meaning;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Two seats under one joist must lie apart, or the computation cannot tell what each carries. */
final class SeatSpacing {

    private static final double INCH = 0.0254;

    /** Nearer than this two seats are a slip, not a layout (m): a choice of this service. */
    private static final double LEAST = INCH - 1e-9;

    private record Seat(double y, String name, Spot spot) {}

    private SeatSpacing() {}

    static void check(List<JoistDraft> joists, List<BearingDraft> bearings, List<ShoreDraft> shores) {
        for (JoistDraft joist : joists) {
            List<Seat> seats = new ArrayList<>();
            bearings.stream()
                    .filter(bearing -> bearing.under(joist))
                    .forEach(b -> seats.add(new Seat(b.y(), b.name(), b.spot().member("at"))));
            shores.stream()
                    .filter(shore -> shore.under(joist))
                    .forEach(s -> seats.add(new Seat(s.y(), s.name(), s.spot().member("at"))));
            seats.sort(Comparator.comparingDouble(Seat::y));
            for (int i = 1; i < seats.size(); i++) {
                if (seats.get(i).y() - seats.get(i - 1).y() < LEAST) {
                    report(seats.get(i - 1), seats.get(i), joist);
                }
            }
        }
    }

    private static void report(Seat one, Seat other, JoistDraft joist) {
        other.spot()
                .report(Messages.CONTACTS_TOO_CLOSE
                        .fault("", Fault.shown(one.name()), Fault.shown(other.name()), Fault.shown(joist.name()))
                        .withLimit("at least 1 in"));
    }
}
