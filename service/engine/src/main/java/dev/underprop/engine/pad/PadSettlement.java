package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.standard.Citation;
import java.util.List;

/**
 * Settlement of a pad under its greatest load on the softest ground of its range, against the limit that the plan names; and
 * its difference from every other pad of its shore, that one under its least load on the stiffest ground, over their distance.
 * The worst of these is the finding. The ground gives in proportion to pressure; what grows with time is not in it.
 */
public final class PadSettlement {

    private PadSettlement() {}

    /**
     * A post under load.
     *
     * @param post which
     * @param least its least load (N), not negative
     * @param greatest its greatest load (N), not less
     */
    public record Loaded(Post post, double least, double greatest) {}

    /**
     * Judges one post.
     *
     * @param here the post
     * @param others the other posts of its shore
     * @param ground what the pads stand on
     * @param limit how far pads may settle
     */
    public static Finding judge(Loaded here, List<Loaded> others, Ground ground, Limits.Settlement limit) {
        if (!(here.post.footing() instanceof Pad pad)) {
            return new CheckResult.NotChecked("no pad is named under this post (declare: pad)");
        }
        if (!(limit instanceof Limits.Settles most)) {
            return new CheckResult.NotChecked("how far pads may settle is not stated (declare: settlement)");
        }
        Finding bearing = GroundPressure.judge(ground, pad, 0);
        if (!(bearing instanceof CheckResult.Judged)) {
            return bearing;
        }
        if (!GroundStiffness.known(ground)) {
            return new CheckResult.NotChecked("how far the ground gives is not known (declare: subgrade)");
        }
        double own = here.greatest / GroundStiffness.of(ground, pad).soft();
        CheckResult.Judged worst = new CheckResult.Judged(Measure.DEFLECTION, own, most.total());
        for (Loaded other : others) {
            if (!(other.post.footing() instanceof Pad near)) {
                return new CheckResult.NotChecked("no pad is named under post " + other.post.name());
            }
            double apart = Math.abs(other.post.x() - here.post.x());
            double least = other.least / GroundStiffness.of(ground, near).stiff();
            double difference = Math.max(0, own - least);
            worst = Worst.of(worst, new CheckResult.Judged(Measure.DEFLECTION, difference, apart * most.slope()));
        }
        return worst;
    }

    /** The range of the ground. */
    public static Citation citation(Ground ground) {
        return GroundStiffness.citation(ground);
    }
}
