package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.soil.Stress;
import dev.underprop.engine.standard.Citation;
import java.util.List;

/**
 * Whether a pad lies over another one: the ground under both would be counted twice. Pads are centred on their posts. Where a
 * weaker layer lies below, what all pads whose loads spread by 1 in 2 to some of the same part of it bring together is held against
 * what it is allowed to take. In ground of one kind pads beside each other never press harder, at any depth, than the hardest of
 * them presses at its underside (stresses add up, and none is more than under one load of that pressure all over), so that there
 * the pressure of each pad is enough.
 */
public final class PadOverlap {

    private static final Citation RULE =
            Citation.remembered("common practice, no source", "", "ground under two pads is counted once");

    /** Pads that overlap by less than this only touch (m). */
    private static final double TOUCH = 1e-6;

    private PadOverlap() {}

    /**
     * A post where it stands.
     *
     * @param post with its pad
     * @param y of its shore (m)
     * @param load greatest load on the pad from the post (N), not negative
     */
    public record Placed(Post post, double y, double load) {}

    /**
     * Judges one post.
     *
     * @param here the post
     * @param others all other posts
     * @param ground under them
     */
    public static Finding judge(Placed here, List<Placed> others, Ground ground) {
        if (!(here.post.footing() instanceof Pad pad)) {
            return new CheckResult.NotChecked("no pad is named under this post (declare: pad)");
        }
        for (Placed other : others) {
            if (overlap(here, other)) {
                return new CheckResult.Condition(
                        false, Measure.FORCE, 0, "its pad lies over the pad of " + other.post.name());
            }
        }
        for (Placed other : others) {
            if (!(other.post.footing() instanceof Pad)) {
                return new CheckResult.NotChecked("no pad is named under post " + other.post.name()
                        + ", so that it is not known whether this one lies over it (declare: pad)");
            }
        }
        return ground instanceof Ground.Layered layered
                ? together(here, pad, others, layered)
                : new CheckResult.Condition(true, Measure.FORCE, 0, "its pad lies over no other pad of the plan");
    }

    /** What pads bring together on the weaker layer, as if all that spreads to some of the same ground met in one place. */
    private static Finding together(Placed here, Pad pad, List<Placed> others, Ground.Layered ground) {
        if (!(pad.weight() instanceof Pad.Known weight)) {
            return weightless(pad);
        }
        double sum = spread(here, pad, weight, ground);
        for (Placed other : others) {
            Pad near = (Pad) other.post.footing();
            if (near(here, other, ground.depth() + pad.statedOffset() + near.statedOffset())) {
                if (!(near.weight() instanceof Pad.Known known)) {
                    return weightless(near);
                }
                sum += spread(other, near, known, ground);
            }
        }
        return new CheckResult.Judged(Measure.PRESSURE, sum, ground.pressure());
    }

    private static double spread(Placed on, Pad pad, Pad.Known weight, Ground.Layered ground) {
        return Stress.spread(on.load + pad.weightOf(weight), pad.along(), pad.across(), ground.depth())
                .value();
    }

    private static Finding weightless(Pad pad) {
        return new CheckResult.NotChecked(
                "the unit weight of pad " + pad.name() + " is not given (declare: unitWeight)");
    }

    /** Whether two pads lie over each other; posts without pads do not. */
    public static boolean overlap(Placed one, Placed other) {
        return near(one, other, 0);
    }

    /** Whether two pads that were larger by so much on the whole (m) would lie over each other. */
    private static boolean near(Placed one, Placed other, double more) {
        if (!(one.post.footing() instanceof Pad pad) || !(other.post.footing() instanceof Pad near)) {
            return false;
        }
        double along = (pad.along() + near.along()) / 2 + more - Math.abs(one.post.x() - other.post.x());
        double across = (pad.across() + near.across()) / 2 + more - Math.abs(one.y - other.y);
        return along > TOUCH && across > TOUCH;
    }

    /** The rule. */
    public static Citation citation() {
        return RULE;
    }
}
