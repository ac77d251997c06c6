package dev.underprop.engine.assess;

import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Shore;

/** The posts that stand on a slab beside another one. All slabs of a plan count as one, which is the safe side. */
final class SlabNeighbours {

    private SlabNeighbours() {}

    /** Distance in plan (m) from a post to the nearest other post whose pad is a slab, infinite where there is none. */
    static double nearest(PlanFrame frame, ContactPlace.OnPost head) {
        JobPlan plan = frame.plan();
        double x = plan.shores().get(head.shore()).posts().get(head.post()).x();
        double y = plan.shores().get(head.shore()).y();
        double nearest = Double.POSITIVE_INFINITY;
        for (ContactPlace place : frame.places()) {
            if (!place.equals(head) && place instanceof ContactPlace.OnPost near) {
                Shore shore = plan.shores().get(near.shore());
                Post post = shore.posts().get(near.post());
                double along = post.x() - x;
                double across = shore.y() - y;
                nearest = slab(post) ? Math.min(nearest, Math.sqrt(along * along + across * across)) : nearest;
            }
        }
        return nearest;
    }

    private static boolean slab(Post post) {
        return post.footing() instanceof Pad pad && pad.kind() == Pad.Kind.SLAB;
    }
}
