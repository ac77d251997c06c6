package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.section.RoundTube;

/** One post with a base plate of 200 mm by 100 mm on a pad of 600 mm by 400 mm by 250 mm, and what tests of pads have in common. */
final class Under {

    static final PostType.Plate BASE = new PostType.Plate(0.2, 0.1);

    static final Pad.Known NO_WEIGHT = new Pad.Known(0, true);

    /** Normal-weight concrete. */
    static final Pad.Known HEAVY = new Pad.Known(24_000, true);

    static final Ground FIRM = new Ground.Given(
            100_000, "report", Ground.Condition.UNDISTURBED, new Ground.Modulus(10e6, 40e6, "plate test"));

    /** Distance to the next post on a slab where there is none. */
    static final double ALONE = Double.POSITIVE_INFINITY;

    private Under() {}

    /** A type of a plain tube, judged with its load so far off the middle (m). */
    static PostType tube(double eccentricity) {
        PostType.Pipe pipe = new PostType.Pipe(new RoundTube(0.06, 0.003), 250e6, eccentricity, true);
        return new PostType("type", new PostType.NotRated(), BASE, BASE, pipe);
    }

    static Pad pad(Pad.Kind kind, Pad.Make make, Pad.Weight weight, Pad.Centring centring) {
        return new Pad("pad", kind, 0.6, 0.4, 0.25, weight, make, centring);
    }

    static Post post(double x, Post.Type type, Post.Footing pad) {
        return new Post("P", x, 2, Post.Stiffness.exactly(Double.POSITIVE_INFINITY), 0, 0, type, pad);
    }

    static Post post(Post.Footing pad) {
        return post(0, new PostType("type", new PostType.NotRated(), BASE, BASE), pad);
    }

    /** A load in the middle of its foot. */
    static PadLoad central(double greatest, double factored, double lean) {
        return new PadLoad(greatest, factored, lean, new PadLoad.Foot(0, true));
    }

    static CheckResult.Judged judged(Finding finding) {
        return (CheckResult.Judged) finding;
    }

    static double ratio(Finding finding) {
        return judged(finding).demand() / judged(finding).capacity();
    }

    static String reason(Finding finding) {
        return ((CheckResult.NotChecked) finding).reason();
    }

    static String refusal(Finding finding) {
        return ((CheckResult.Refused) finding).reason();
    }
}
