package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.section.RectangularSection;
import java.util.List;

/** One post under a beam, with plates in round metric figures, and what tests of its judges have in common. */
final class Props {

    static final PostType.Shank ROUND = new PostType.Round(0.05);

    /** 200 mm square, 10 mm thick, 250 MPa, round post of 50 mm. */
    static final Plate PLATE = new Plate(0.2, 0.2, 0.01, 250e6, ROUND);

    private Props() {}

    static PostType type(Plate head, Plate base) {
        return new PostType("type", new PostType.NotRated(), head, base);
    }

    static Pad pad(Pad.Kind kind) {
        return new Pad("pad", kind, 0.5, 0.4, 0.25, new Pad.Unknown());
    }

    static Post post(Post.Type type, Post.Footing pad, Post.Ends ends) {
        return new Post("P", 0, 2, Post.Stiffness.exactly(Plans.RIGID), 0, 0, type, pad, ends);
    }

    static Post post(Plate head, Plate base, Post.Footing pad) {
        return post(type(head, base), pad, Post.Ends.UNDECLARED);
    }

    /** A beam of one ply, 3 m long, the post under its middle. */
    static Shore shore(double breadth, Member.Moisture moisture) {
        Member beam = new Member(
                "beam", new RectangularSection(breadth, 9.25 * Plans.INCH), 1, Plans.HEM_FIR_2, false, moisture, 0);
        return shore(beam, -1.5);
    }

    static Shore shore(Member beam, double start) {
        Post post = post(new Post.NoType(), new Post.NoPad(), Post.Ends.UNDECLARED);
        return new Shore("A", 0, beam, start, 3, List.of(), List.of(post));
    }

    static CheckResult.Judged judged(Finding finding) {
        return (CheckResult.Judged) finding;
    }

    static String reason(Finding finding) {
        return ((CheckResult.NotChecked) finding).reason();
    }

    static String refusal(Finding finding) {
        return ((CheckResult.Refused) finding).reason();
    }
}
