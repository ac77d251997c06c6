package dev.underprop.wire.meaning;

import dev.underprop.api.model.Bearing;
import dev.underprop.engine.plan.Fastening;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what the joists rest on. */
final class BearingsReader {

    private static final String GIRDER = "girder";

    private final Spot spot;
    private final List<JoistDraft> joists;
    private final SeatReader seats;
    private final GirderReader girders;

    BearingsReader(Spot spot, List<JoistDraft> joists, SeatReader seats, GirderReader girders) {
        this.spot = spot;
        this.joists = joists;
        this.seats = seats;
        this.girders = girders;
    }

    List<BearingDraft> read(List<Bearing> bearings) {
        List<BearingDraft> drafts = new ArrayList<>();
        for (int i = 0; i < bearings.size(); i++) {
            drafts.add(read(bearings.get(i), spot.element(i)));
        }
        return drafts;
    }

    private BearingDraft read(Bearing bearing, Spot at) {
        Optional<String> kind = at.text("kind", bearing.getKind()).choice(List.of("rigid", "spring", GIRDER));
        boolean girder = kind.isPresent() && kind.get().equals(GIRDER);
        BearingDraft bare = girder ? girder(bearing, at) : line(bearing, kind, at);
        reportUnderNothing(bare);
        boolean fastened = !(bare.fastening() instanceof Fastening.Loose);
        return bare.withGaps(seats.read(at, bearing.getGaps(), joist -> !bare.placed() || bare.under(joist), fastened));
    }

    private BearingDraft girder(Bearing bearing, Spot at) {
        List.of(
                        at.text("stiffness", bearing.getStiffness()),
                        at.text("from", bearing.getFrom()),
                        at.text("to", bearing.getTo()))
                .stream()
                .filter(Text::given)
                .forEach(text ->
                        text.spot().report(Messages.BEARING_MEMBER_FOREIGN, text.value(), text.name(), "a girder"));
        GirderDraft girder = girders.read(bearing, at);
        return draft(bearing, at, Double.POSITIVE_INFINITY, girder.start(), girder.end(), Optional.of(girder));
    }

    private static BearingDraft line(Bearing bearing, Optional<String> kind, Spot at) {
        if (kind.isPresent() && bearing.getBeam() != null) {
            at.member("beam").report(Messages.BEARING_MEMBER_FOREIGN, "", "beam", "a sill or wall");
        }
        if (kind.isPresent() && bearing.getPiers() != null) {
            at.member("piers").report(Messages.BEARING_MEMBER_FOREIGN, "", "piers", "a sill or wall");
        }
        Text end = at.text("to", bearing.getTo());
        double from = at.text("from", bearing.getFrom()).quantityOr(Range.POSITION, Double.NEGATIVE_INFINITY);
        double to = end.quantityOr(Range.POSITION, Double.POSITIVE_INFINITY);
        if (to <= from) {
            end.spot().report(Messages.EXTENT_EMPTY, end.value());
        }
        double stiffness = SupportReader.stiffness(kind, at.text("stiffness", bearing.getStiffness()));
        return draft(bearing, at, stiffness, from, to, Optional.empty());
    }

    private static BearingDraft draft(
            Bearing bearing, Spot at, double stiffness, double from, double to, Optional<GirderDraft> girder) {
        return new BearingDraft(
                at,
                bearing.getName(),
                at.text("at", bearing.getAt()).quantity(Range.POSITION),
                at.text("length", bearing.getLength()).quantity(Range.THICKNESS),
                stiffness,
                from,
                to,
                SupportReader.fastening(bearing.getFastened(), at.member("fastened")),
                List.of(),
                girder,
                SeatBodyReader.read(bearing.getSeat(), at.member("seat")));
    }

    private void reportUnderNothing(BearingDraft draft) {
        boolean allKnown = draft.placed() && joists.stream().allMatch(JoistDraft::known);
        if (allKnown && !joists.isEmpty() && joists.stream().noneMatch(draft::under)) {
            draft.spot().member("at").report(Messages.BEARING_UNDER_NO_JOIST, "", Fault.shown(draft.name()));
        }
    }
}
