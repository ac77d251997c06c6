package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.standard.Citation;
import java.util.List;

/**
 * Whether a pad lies over another one: the ground under both would be counted twice. Pads are centred on their posts. Where a
 * weaker layer lies below, pads whose load spreads to the same part of it are not checked: what they do to it together is not
 * worked out.
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
     */
    public record Placed(Post post, double y) {}

    /**
     * Judges one post.
     *
     * @param here the post
     * @param others all other posts
     * @param ground under them
     */
    public static Finding judge(Placed here, List<Placed> others, Ground ground) {
        if (!(here.post.footing() instanceof Pad)) {
            return new CheckResult.NotChecked("no pad is named under this post (declare: pad)");
        }
        for (Placed other : others) {
            if (overlap(here, other)) {
                return new CheckResult.Condition(
                        false, Measure.FORCE, 0, "its pad lies over the pad of " + other.post.name());
            }
        }
        for (Placed other : others) {
            if (ground instanceof Ground.Layered layered && near(here, other, layered.depth())) {
                return new CheckResult.NotChecked("its load and that of " + other.post.name()
                        + " spread to the same part of the weaker layer below, which is not worked out");
            }
        }
        return new CheckResult.Condition(true, Measure.FORCE, 0, "its pad lies over no other pad of the plan");
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
