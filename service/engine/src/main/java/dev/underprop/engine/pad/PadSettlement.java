package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.soil.ElasticSettlement;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
import java.util.List;

/**
 * Settlement of a pad under its greatest load on the softest ground of its range, against the limit that the plan names; and
 * its difference from every other pad of its shore, that one under its least load on the stiffest ground, over their distance.
 * The worst of these is the finding. The other pads of the plan sink the ground under it too, all of them under their greatest
 * loads: by as much as they would on elastic ground without end that is as soft as the spring of this pad. That one least loaded
 * is taken without its neighbours. The ground gives in proportion to pressure; what grows with time is not in it.
 */
public final class PadSettlement {

    private PadSettlement() {}

    /**
     * A post under load.
     *
     * @param post which
     * @param y of its shore (m)
     * @param least its least load (N), not negative
     * @param greatest its greatest load (N), not less
     */
    public record Loaded(Post post, double y, double least, double greatest) {}

    /**
     * Judges one post.
     *
     * @param here the post
     * @param shore the other posts of its shore
     * @param beyond the posts of other shores, which press on the same ground
     * @param ground what the pads stand on
     * @param limit how far pads may settle
     */
    public static Finding judge(
            Loaded here,
            List<Loaded> shore,
            List<Loaded> beyond,
            Ground ground,
            Limits.Settlement limit,
            Working working) {
        if (!(here.post.footing() instanceof Pad pad)) {
            return new CheckResult.NotChecked("no pad is named under this post (declare: pad)");
        }
        if (!(limit instanceof Limits.Settles most)) {
            return new CheckResult.NotChecked("how far pads may settle is not stated (declare: settlement)");
        }
        Finding bearing = GroundPressure.judge(ground, Tread.whole(pad, 0, 0), "q", Working.OFF);
        if (!(bearing instanceof CheckResult.Judged)) {
            return bearing;
        }
        if (!GroundStiffness.known(ground)) {
            return new CheckResult.NotChecked("how far the ground gives is not known (declare: subgrade)");
        }
        for (Loaded other : beyond) {
            if (!(other.post.footing() instanceof Pad)) {
                return unpadded(other);
            }
        }
        for (Loaded other : shore) {
            if (!(other.post.footing() instanceof Pad)) {
                return unpadded(other);
            }
        }
        double soft = GroundStiffness.of(ground, pad).soft();
        double added = (sunk(here, shore) + sunk(here, beyond)) * GroundStiffness.rigid(pad) / soft;
        working.analysis("P", "greatest load of the post", Dimension.FORCE, here.greatest);
        String sinks = spring(ground, pad, "", soft, true, working);
        working.rule(
                "wn", "the other pads add, as on elastic ground", Dimension.LENGTH, added, GroundStiffness.ELASTIC, "");
        double own = working.step(
                "w", "settles by", Dimension.LENGTH, here.greatest / soft + added, "P / " + sinks + " + wn");
        Working alone = working.branch();
        alone.plan("wa", "how far pads may settle", Dimension.LENGTH, most.total());
        CheckResult.Judged worst = new CheckResult.Judged(Measure.DEFLECTION, own, most.total());
        alone.compared("w", "wa", worst);
        for (Loaded other : shore) {
            Pad near = (Pad) other.post.footing();
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
        double stiff = GroundStiffness.of(ground, near).stiff();
        double apart = Math.abs(other.post.x() - here.post.x());
        double least = other.least / stiff;
        double difference = Math.max(0, own - least);
        working.analysis("P2", "least load of " + other.post.name(), Dimension.FORCE, other.least);
        if (Double.isInfinite(stiff)) {
            working.plan("w2", "settles by nothing, on rock", Dimension.LENGTH, least);
        } else {
            String sinks = spring(ground, near, "2", stiff, false, working);
            working.step("w2", "settles by", Dimension.LENGTH, least, "P2 / " + sinks);
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

    private static Finding unpadded(Loaded other) {
        return new CheckResult.NotChecked("no pad is named under post " + other.post.name()
                + ", so that what it adds to the settlement is not known (declare: pad)");
    }

    /** How far others sink the middle of a pad, times E/(1 - nu²) (N/m). */
    private static double sunk(Loaded here, List<Loaded> others) {
        double sum = 0;
        for (Loaded other : others) {
            Pad near = (Pad) other.post.footing();
            double x = here.post.x() - other.post.x();
            double y = here.y - other.y;
            sum += other.greatest
                    * ElasticSettlement.beside(near.along(), near.across(), x, y)
                            .value();
        }
        return sum;
    }

    /** Tells a pad's spring and returns its formula. */
    private static String spring(Ground ground, Pad pad, String mark, double spring, boolean soft, Working working) {
        if (working == Working.OFF) {
            return "";
        }
        String end = soft ? "soft" : "stiff";
        if (ground.givesAs() instanceof Ground.Elastic) {
            working.rule(
                    "K" + mark,
                    "rigid pad on elastic ground, " + end + " end of its range",
                    Dimension.LINE_LOAD,
                    spring,
                    GroundStiffness.ELASTIC,
                    "");
            return "K" + mark;
        }
        Subgrade range = Subgrade.of(ground);
        working.plan("B" + mark, "pad along the beam", Dimension.LENGTH, pad.along());
        working.plan("L" + mark, "pad across the beam", Dimension.LENGTH, pad.across());
        working.step("A" + mark, "area of its pad", Dimension.AREA, pad.area(), "B" + mark + " × L" + mark);
        working.rule(
                "k" + mark,
                "ground, " + end + " end of its range",
                Dimension.PER_VOLUME,
                soft ? range.soft() : range.stiff(),
                range.citation(),
                "");
        return "( k" + mark + " × A" + mark + " )";
    }

    /** The range of the ground. */
    public static Citation citation(Ground ground) {
        return GroundStiffness.citation(ground);
    }
}
