package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.pad.PadOverlap;
import dev.underprop.engine.pad.PadOverlap.Placed;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;
import java.util.ArrayList;
import java.util.List;

/** Whether the pad of a post lies over another pad of the plan. */
final class PadsPlaced {

    private PadsPlaced() {}

    static Finding judge(JobPlan plan, ContactPlace.OnPost head) {
        Shore own = plan.shores().get(head.shore());
        Post post = own.posts().get(head.post());
        List<Placed> others = new ArrayList<>();
        for (Shore shore : plan.shores()) {
            for (Post other : shore.posts()) {
                if (other != post) {
                    others.add(new Placed(other, shore.y()));
                }
            }
        }
        return PadOverlap.judge(new Placed(post, own.y()), others, plan.ground());
    }
}
