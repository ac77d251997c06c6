package dev.underprop.wire.meaning;

import dev.underprop.api.model.Beam;
import dev.underprop.api.model.Shore;
import dev.underprop.engine.plan.Member;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the shores: beam, posts, and whether they stand under each other and under the floor. */
final class ShoresReader {

    private final List<JoistDraft> joists;
    private final SeatReader seats;
    private final TimberReader timber;
    private final PostsReader posts;

    ShoresReader(List<JoistDraft> joists, SeatReader seats, TimberReader timber, PostsReader posts) {
        this.joists = joists;
        this.seats = seats;
        this.timber = timber;
        this.posts = posts;
    }

    List<ShoreDraft> read(List<Shore> shores, Spot spot) {
        List<ShoreDraft> drafts = new ArrayList<>();
        for (int i = 0; i < shores.size(); i++) {
            drafts.add(read(shores.get(i), spot.element(i)));
        }
        return drafts;
    }

    private ShoreDraft read(Shore shore, Spot at) {
        Spot beamSpot = at.member("beam");
        Beam beam = shore.getBeam();
        Optional<Member> member = timber.read(TimberText.of(beam, beamSpot), beam.getPlies());
        double y = at.text("at", shore.getAt()).quantity(Range.POSITION);
        double start = beamSpot.text("start", beam.getStart()).quantity(Range.POSITION);
        double length = beamSpot.text("length", beam.getLength()).quantity(Range.MEMBER_LENGTH);
        AssemblyReader.Beam plies = new AssemblyReader.Beam(beam.getPlies(), start, start + length);
        ShoreDraft bare = new ShoreDraft(
                at,
                shore.getName(),
                y,
                member,
                start,
                length,
                List.of(),
                posts.read(shore.getPosts(), at.member("posts")),
                bracing(shore, at),
                AssemblyReader.read(shore.getAssembly(), plies, at.member("assembly")));
        reportPosts(bare);
        reportJoists(bare, Boolean.TRUE.equals(shore.getPartial()));
        return new ShoreDraft(
                at,
                bare.name(),
                bare.y(),
                member,
                bare.start(),
                bare.length(),
                seats.read(at, shore.getGaps(), joist -> !bare.known() || bare.under(joist), false),
                bare.posts(),
                bare.bracing(),
                bare.assembly());
    }

    private static dev.underprop.engine.plan.Shore.Bracing bracing(Shore shore, Spot at) {
        return new dev.underprop.engine.plan.Shore.Bracing(
                RestraintReader.sides(shore.getHeads(), at.member("heads")),
                RestraintReader.read(shore.getRoll(), at.member("roll")));
    }

    private static void reportPosts(ShoreDraft shore) {
        for (PostDraft post : shore.posts()) {
            if (shore.beside(post.x())) {
                post.spot().member("at").report(Messages.POST_OFF_BEAM, "", Fault.shown(post.name()));
            }
        }
    }

    private void reportJoists(ShoreDraft shore, boolean partial) {
        if (!shore.known() || joists.isEmpty() || !joists.stream().allMatch(JoistDraft::known)) {
            return;
        }
        List<JoistDraft> across =
                joists.stream().filter(joist -> joist.crosses(shore.y())).toList();
        String shown = Fault.shown(shore.name());
        if (across.isEmpty()) {
            shore.spot().member("at").report(Messages.SHORE_UNDER_NO_JOIST, "", shown);
        } else if (across.stream().noneMatch(shore::under)) {
            shore.spot().member("beam").report(Messages.BEAM_OFF_FLOOR, "", shown);
        } else if (!partial) {
            across.stream()
                    .filter(joist -> shore.beside(joist.x()))
                    .findFirst()
                    .ifPresent(joist -> shore.spot()
                            .member("beam")
                            .report(Messages.JOIST_BESIDE_BEAM, "", Fault.shown(joist.name()), shown));
        }
    }
}
