package dev.underprop.wire.meaning;

import dev.underprop.api.model.Joist;
import dev.underprop.api.model.JoistSet;
import dev.underprop.engine.plan.EndNotch;
import dev.underprop.engine.plan.Member;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Reads the joists: the regular row, then those listed one by one. The list comes back in order of x, then y. */
final class JoistsReader {

    /** Joists nearer than this are in one place (m). */
    private static final double SAME_PLACE = 1e-3;

    private final Spot spot;
    private final JoistSet set;
    private final TimberReader timber;
    private final TimberText common;
    private final Text start;
    private final Text length;
    private final EndNotch notch;
    private final List<JoistDraft> joists = new ArrayList<>();
    private int counted;

    JoistsReader(Spot spot, JoistSet set, TimberReader timber) {
        this.spot = spot;
        this.set = set;
        this.timber = timber;
        this.common = TimberText.of(set, spot);
        this.start = spot.text("start", set.getStart());
        this.length = spot.text("length", set.getLength());
        this.notch = notch(spot.text("endNotch", set.getEndNotch()), new EndNotch.Unstated());
    }

    List<JoistDraft> read() {
        readRow();
        readEach();
        if (joists.isEmpty() && set.getCount() == null && set.getSpacing() == null) {
            spot.report(Messages.NO_JOISTS, "");
        }
        reportNames();
        joists.sort(Comparator.comparingDouble(JoistDraft::x).thenComparingDouble(JoistDraft::start));
        reportOverlaps();
        return joists;
    }

    private void readRow() {
        Text spacing = spot.text("spacing", set.getSpacing());
        Text at = spot.text("at", set.getAt());
        boolean some = set.getCount() != null || spacing.given() || at.given();
        if (!some) {
            return;
        }
        double step = spacing.quantityOr(Range.SPACING, Double.NaN);
        double first = at.quantityOr(Range.POSITION, 0);
        if (set.getCount() == null || !spacing.given()) {
            spot.report(Messages.ROW_INCOMPLETE, "");
            return;
        }
        Optional<Member> member = timber.read(common, 1);
        double near = start.quantity(Range.POSITION);
        double reach = length.quantity(Range.MEMBER_LENGTH);
        for (int i = 0; i < set.getCount(); i++) {
            joists.add(new JoistDraft(spot, nextName(), first + i * step, near, reach, member, notch));
        }
    }

    private void readEach() {
        if (set.getEach() == null) {
            return;
        }
        Optional<Member> shared = Optional.empty();
        for (int i = 0; i < set.getEach().size(); i++) {
            Joist joist = set.getEach().get(i);
            Spot at = spot.member("each").element(i);
            TimberText own = TimberText.of(joist, at);
            if (own.given() || shared.isEmpty()) {
                Optional<Member> member = timber.read(own.or(common), 1);
                shared = own.given() ? shared : member;
                joists.add(draft(joist, at, member));
            } else {
                joists.add(draft(joist, at, shared));
            }
        }
    }

    private JoistDraft draft(Joist joist, Spot at, Optional<Member> member) {
        String name = joist.getName() == null ? nextName() : joist.getName();
        return new JoistDraft(
                at,
                name,
                at.text("at", joist.getAt()).quantity(Range.POSITION),
                at.text("start", joist.getStart()).or(start).quantity(Range.POSITION),
                at.text("length", joist.getLength()).or(length).quantity(Range.MEMBER_LENGTH),
                member,
                notch(at.text("endNotch", joist.getEndNotch()), notch));
    }

    private static EndNotch notch(Text depth, EndNotch common) {
        double cut = depth.quantityOr(Range.CLEARANCE, Double.NaN);
        return Double.isNaN(cut) ? common : new EndNotch.Cut(cut);
    }

    private String nextName() {
        counted++;
        return "J" + counted;
    }

    private void reportNames() {
        NameTable<JoistDraft> names = new NameTable<>("joist");
        for (JoistDraft joist : joists) {
            names.add(joist.name(), joist, joist.spot().member("name"));
        }
    }

    private void reportOverlaps() {
        for (int i = 0; i < joists.size(); i++) {
            JoistDraft one = joists.get(i);
            for (int k = i + 1; k < joists.size() && joists.get(k).x() - one.x() < SAME_PLACE; k++) {
                JoistDraft other = joists.get(k);
                boolean overlap = other.start() < one.end() - SAME_PLACE && one.start() < other.end() - SAME_PLACE;
                if (one.known() && other.known() && overlap) {
                    other.spot()
                            .member("at")
                            .report(Messages.JOISTS_OVERLAP, "", Fault.shown(one.name()), Fault.shown(other.name()));
                }
            }
        }
    }
}
