package dev.underprop.wire.meaning;

import dev.underprop.api.model.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads what the joists rest on. */
final class BearingsReader {

    private final Spot spot;
    private final List<JoistDraft> joists;
    private final SeatReader seats;

    BearingsReader(Spot spot, List<JoistDraft> joists, SeatReader seats) {
        this.spot = spot;
        this.joists = joists;
        this.seats = seats;
    }

    List<BearingDraft> read(List<Bearing> bearings) {
        List<BearingDraft> drafts = new ArrayList<>();
        for (int i = 0; i < bearings.size(); i++) {
            drafts.add(read(bearings.get(i), spot.element(i)));
        }
        return drafts;
    }

    private BearingDraft read(Bearing bearing, Spot at) {
        double y = at.text("at", bearing.getAt()).quantity(Range.POSITION);
        double length = at.text("length", bearing.getLength()).quantity(Range.THICKNESS);
        double from = at.text("from", bearing.getFrom()).quantityOr(Range.POSITION, Double.NEGATIVE_INFINITY);
        double to = at.text("to", bearing.getTo()).quantityOr(Range.POSITION, Double.POSITIVE_INFINITY);
        if (to <= from) {
            at.member("to").report(Messages.EXTENT_EMPTY, bearing.getTo() == null ? "" : bearing.getTo());
        }
        Fastening fastening = fastening(bearing.getFastened(), at.member("fastened"));
        BearingDraft draft = new BearingDraft(
                at, bearing.getName(), y, length, stiffness(bearing, at), from, to, fastening, List.of());
        reportUnderNothing(draft);
        boolean fastened = !(fastening instanceof Fastening.Loose);
        return new BearingDraft(
                at,
                draft.name(),
                y,
                length,
                draft.stiffness(),
                from,
                to,
                fastening,
                seats.read(at, bearing.getGaps(), draft::under, fastened));
    }

    private static double stiffness(Bearing bearing, Spot at) {
        Text stiffness = at.text("stiffness", bearing.getStiffness());
        Optional<String> kind = at.text("kind", bearing.getKind()).choice(List.of("rigid", "spring"));
        double value = stiffness.quantityOr(Range.STIFFNESS, Double.POSITIVE_INFINITY);
        if (kind.isPresent() && kind.get().equals("rigid") && stiffness.given()) {
            stiffness.spot().report(Messages.STIFFNESS_WITH_RIGID, stiffness.value());
        }
        if (kind.isPresent() && kind.get().equals("spring") && !stiffness.given()) {
            stiffness.spot().report(Messages.STIFFNESS_MISSING, "");
        }
        return value;
    }

    private static Fastening fastening(dev.underprop.api.model.@Nullable Fastening fastened, Spot at) {
        if (fastened == null) {
            return new Fastening.Loose();
        }
        Text uplift = at.text("uplift", fastened.getUplift());
        double value = uplift.quantityOr(Range.CAPACITY, Double.NaN);
        return Double.isNaN(value)
                ? new Fastening.Undescribed(fastened.getBy())
                : new Fastening.Held(value, fastened.getBy());
    }

    private void reportUnderNothing(BearingDraft draft) {
        boolean placed = !Double.isNaN(draft.y()) && draft.to() > draft.from();
        boolean allKnown = placed && joists.stream().allMatch(JoistDraft::known);
        if (allKnown && !joists.isEmpty() && joists.stream().noneMatch(draft::under)) {
            draft.spot().member("at").report(Messages.BEARING_UNDER_NO_JOIST, "", Fault.shown(draft.name()));
        }
    }
}
