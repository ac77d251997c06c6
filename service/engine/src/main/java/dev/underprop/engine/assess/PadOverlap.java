package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;

/** Whether a pad lies over another one: the ground under both would be counted twice. Pads are centred on their posts. */
final class PadOverlap {

    /** Pads that overlap by less than this only touch (m). */
    private static final double TOUCH = 1e-6;

    private PadOverlap() {}

    static Finding judge(JobPlan plan, ContactPlace.OnPost head) {
        Shore shore = plan.shores().get(head.shore());
        Post post = shore.posts().get(head.post());
        if (!(post.footing() instanceof Pad pad)) {
            return new CheckResult.NotChecked("no pad is named under this post (declare: pad)");
        }
        for (Shore other : plan.shores()) {
            for (Post neighbour : other.posts()) {
                boolean itself = neighbour == post;
                if (!itself
                        && neighbour.footing() instanceof Pad near
                        && overlap(shore, post, pad, other, neighbour, near)) {
                    return new CheckResult.Condition(
                            false, Measure.FORCE, 0, "its pad lies over the pad of " + neighbour.name());
                }
            }
        }
        return new CheckResult.Condition(true, Measure.FORCE, 0, "its pad lies over no other pad of the plan");
    }

    private static boolean overlap(Shore shore, Post post, Pad pad, Shore other, Post neighbour, Pad near) {
        double along = (pad.along() + near.along()) / 2 - Math.abs(post.x() - neighbour.x());
        double across = (pad.across() + near.across()) / 2 - Math.abs(shore.y() - other.y());
        return along > TOUCH && across > TOUCH;
    }
}
