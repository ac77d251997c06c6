package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
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

    /** As {@link #judge(Loaded, List, Ground, Limits.Settlement, Working)}, without a record. */
    public static Finding judge(Loaded here, List<Loaded> others, Ground ground, Limits.Settlement limit) {
        return judge(here, others, ground, limit, Working.OFF);
    }

    /**
     * Judges one post.
     *
     * @param here the post
     * @param others the other posts of its shore
     * @param ground what the pads stand on
     * @param limit how far pads may settle
     */
    public static Finding judge(
            Loaded here, List<Loaded> others, Ground ground, Limits.Settlement limit, Working working) {
        if (!(here.post.footing() instanceof Pad pad)) {
            return new CheckResult.NotChecked("no pad is named under this post (declare: pad)");
        }
        if (!(limit instanceof Limits.Settles most)) {
            return new CheckResult.NotChecked("how far pads may settle is not stated (declare: settlement)");
        }
        Finding bearing = GroundPressure.judge(ground, 0);
        if (!(bearing instanceof CheckResult.Judged)) {
            return bearing;
        }
        if (!GroundStiffness.known(ground)) {
            return new CheckResult.NotChecked("how far the ground gives is not known (declare: subgrade)");
        }
        Subgrade range = Subgrade.of(ground);
        working.analysis("P", "greatest load of the post", Dimension.FORCE, here.greatest);
        working.step("A", "area of its pad", Dimension.AREA, pad.area(), tell("", pad, working));
        working.rule("k", "ground, soft end of its range", Dimension.PER_VOLUME, range.soft(), range.citation(), "");
        double own = working.step(
                "w",
                "settles by",
                Dimension.LENGTH,
                here.greatest / GroundStiffness.of(ground, pad).soft(),
                "P / ( k × A )");
        Working alone = working.branch();
        alone.plan("wa", "how far pads may settle", Dimension.LENGTH, most.total());
        CheckResult.Judged worst = new CheckResult.Judged(Measure.DEFLECTION, own, most.total());
        alone.compared("w", "wa", worst);
        for (Loaded other : others) {
            if (!(other.post.footing() instanceof Pad near)) {
                return new CheckResult.NotChecked(
                        "no pad is named under post " + other.post.name() + " (declare: pad)");
            }
            Working branch = working.branch();
            CheckResult.Judged difference = difference(here, own, other, near, ground, most, branch);
            CheckResult.Judged before = worst;
            worst = Worst.of(before, difference);
            alone = worst == before ? alone : branch;
        }
        working.adopt(alone);
        return worst;
    }

    private static CheckResult.Judged difference(
            Loaded here, double own, Loaded other, Pad near, Ground ground, Limits.Settles most, Working working) {
        Subgrade range = Subgrade.of(ground);
        double stiff = GroundStiffness.of(ground, near).stiff();
        double apart = Math.abs(other.post.x() - here.post.x());
        double least = other.least / stiff;
        double difference = Math.max(0, own - least);
        working.analysis("P2", "least load of " + other.post.name(), Dimension.FORCE, other.least);
        working.step("A2", "area of its pad", Dimension.AREA, near.area(), tell("2", near, working));
        if (Double.isInfinite(stiff)) {
            working.plan("w2", "settles by nothing, on rock", Dimension.LENGTH, least);
        } else {
            working.rule(
                    "k2", "ground, stiff end of its range", Dimension.PER_VOLUME, range.stiff(), range.citation(), "");
            working.step("w2", "settles by", Dimension.LENGTH, least, "P2 / ( k2 × A2 )");
        }
        working.step("Δw", "difference", Dimension.LENGTH, difference, "max( 0 , w - w2 )");
        working.plan("x", "distance of the two", Dimension.LENGTH, apart);
        working.plan("i", "difference over distance that is allowed", Dimension.NUMBER, most.slope());
        double allowed =
                working.step("wa", "difference that is allowed", Dimension.LENGTH, apart * most.slope(), "x × i");
        CheckResult.Judged judged = new CheckResult.Judged(Measure.DEFLECTION, difference, allowed);
        working.compared("Δw", "wa", judged);
        return judged;
    }

    private static String tell(String mark, Pad pad, Working working) {
        working.plan("B" + mark, "pad along the beam", Dimension.LENGTH, pad.along());
        working.plan("L" + mark, "pad across the beam", Dimension.LENGTH, pad.across());
        return mark.isEmpty() ? "B × L" : "B2 × L2";
    }

    /** The range of the ground. */
    public static Citation citation(Ground ground) {
        return Subgrade.of(ground).citation();
    }
}
