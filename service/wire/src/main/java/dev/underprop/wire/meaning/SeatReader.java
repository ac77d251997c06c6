package dev.underprop.wire.meaning;

import dev.underprop.engine.plan.SeatGap;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Reads the gaps under joists at one seat. */
final class SeatReader {

    private final List<JoistDraft> joists;
    private final NameTable<Integer> names;

    SeatReader(List<JoistDraft> joists, NameTable<Integer> names) {
        this.joists = joists;
        this.names = names;
    }

    /**
     * @param spot the object that has the gaps
     * @param gaps as the plan gives them
     * @param over whether a joist passes over the seat
     * @param fastened whether the seat is fastened
     */
    List<SeatGap> read(
            Spot spot,
            @Nullable List<dev.underprop.api.model.SeatGap> gaps,
            Predicate<JoistDraft> over,
            boolean fastened) {
        List<SeatGap> read = new ArrayList<>();
        Set<Integer> seen = new HashSet<>();
        for (int i = 0; gaps != null && i < gaps.size(); i++) {
            Spot at = spot.member("gaps").element(i);
            String name = gaps.get(i).getJoist();
            double gap = at.text("gap", gaps.get(i).getGap()).quantity(Range.CLEARANCE);
            Spot joistSpot = at.member("joist");
            names.find(name, joistSpot).ifPresent(joist -> {
                reportFaults(joistSpot, joists.get(joist), over, !seen.add(joist), fastened && gap > 0);
                if (!Double.isNaN(gap)) {
                    read.add(new SeatGap(joist, gap));
                }
            });
        }
        return read;
    }

    private static void reportFaults(
            Spot spot, JoistDraft joist, Predicate<JoistDraft> over, boolean twice, boolean clearOfFastening) {
        String shown = Fault.shown(joist.name());
        if (twice) {
            spot.report(Messages.GAP_TWICE, joist.name(), shown);
        }
        if (joist.known() && !over.test(joist)) {
            spot.report(Messages.GAP_WITHOUT_SEAT, joist.name(), shown);
        }
        if (clearOfFastening) {
            spot.report(Messages.GAP_WITH_FASTENING, joist.name(), shown);
        }
    }
}
