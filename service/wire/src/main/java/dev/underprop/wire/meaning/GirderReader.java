package dev.underprop.wire.meaning;

import dev.underprop.api.model.Beam;
import dev.underprop.api.model.Bearing;
import dev.underprop.api.model.Pier;
import dev.underprop.engine.plan.Member;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads a girder: its beam, and the piers under it. */
final class GirderReader {

    /** Piers nearer than this are in one place (m). */
    private static final double SAME_PLACE = 1e-3;

    private final TimberReader timber;

    GirderReader(TimberReader timber) {
        this.timber = timber;
    }

    GirderDraft read(Bearing bearing, Spot at) {
        List<GirderDraft.Pier> piers = piers(bearing.getPiers(), at.member("piers"));
        GirderDraft girder = girder(bearing.getBeam(), at.member("beam"), piers);
        for (GirderDraft.Pier pier : piers) {
            if (girder.beside(pier.x())) {
                pier.spot().member("at").report(Messages.PIER_OFF_GIRDER, "", Fault.shown(pier.name()));
            }
        }
        return girder;
    }

    private GirderDraft girder(@Nullable Beam beam, Spot at, List<GirderDraft.Pier> piers) {
        if (beam == null) {
            at.report(Messages.MEMBER_MISSING, "", "beam");
            return new GirderDraft(Optional.empty(), Double.NaN, Double.NaN, piers);
        }
        Optional<Member> member = timber.read(TimberText.of(beam, at), beam.getPlies());
        return new GirderDraft(
                member,
                at.text("start", beam.getStart()).quantity(Range.POSITION),
                at.text("length", beam.getLength()).quantity(Range.MEMBER_LENGTH),
                piers);
    }

    private static List<GirderDraft.Pier> piers(@Nullable List<Pier> piers, Spot at) {
        if (piers == null) {
            at.report(Messages.MEMBER_MISSING, "", "piers");
            return List.of();
        }
        List<GirderDraft.Pier> drafts = new ArrayList<>();
        for (int i = 0; i < piers.size(); i++) {
            drafts.add(pier(piers.get(i), at.element(i)));
        }
        drafts.sort(Comparator.comparingDouble(GirderDraft.Pier::x));
        reportTooClose(drafts);
        return drafts;
    }

    private static GirderDraft.Pier pier(Pier pier, Spot at) {
        Optional<String> kind = at.text("kind", pier.getKind()).choice(List.of("rigid", "spring"));
        return new GirderDraft.Pier(
                at,
                pier.getName(),
                at.text("at", pier.getAt()).quantity(Range.POSITION),
                at.text("length", pier.getLength()).quantity(Range.THICKNESS),
                SupportReader.stiffness(kind, at.text("stiffness", pier.getStiffness())),
                SupportReader.fastening(pier.getFastened(), at.member("fastened")),
                SeatBodyReader.read(pier.getSeat(), at.member("seat")));
    }

    private static void reportTooClose(List<GirderDraft.Pier> piers) {
        for (int i = 1; i < piers.size(); i++) {
            GirderDraft.Pier one = piers.get(i - 1);
            GirderDraft.Pier other = piers.get(i);
            if (other.x() - one.x() < SAME_PLACE) {
                other.spot()
                        .member("at")
                        .report(Messages.PIERS_TOO_CLOSE, "", Fault.shown(one.name()), Fault.shown(other.name()));
            }
        }
    }
}
