package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.pad.PadLoad;
import dev.underprop.engine.plan.LagScrews;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.standard.Citation;

/**
 * Head and foot of a post against a sideways force: the larger of 2.5 % of its load and of what its lean pushes together with
 * its share of known sideways loads. The worse end counts. Where nothing but the load holds an end, the least friction under
 * the least load counts, over 1.5; where that load nearly vanishes, friction counts for nothing.
 */
final class SidewaysJudge {

    static final Citation RULE = Citation.remembered(
            "BS 5975 and EN 12812 practice",
            "",
            "2.5 % of the load, or lean and known load; lag screws by NDS 2018, chapter 12; friction over 1.5");

    /** Part of the load that stands for what is not foreseen. */
    static final double NOTIONAL = PadLoad.NOTIONAL;

    /** Friction is divided by it: EN 12812, from memory. */
    private static final double SAFETY = 1.5;

    /** A contact whose least force falls to this part of its greatest nearly opens; common practice, no source. */
    private static final double NEARLY_OPEN = 0.10;

    /** Least of the values listed for plain steel on cast concrete: EN 12812 annex B and HSE RR 071. */
    private static final double STEEL_ON_CONCRETE = 0.1;

    /** Least of the values listed for steel on steel: EN 12812 annex B, from memory. */
    private static final double STEEL_ON_STEEL = 0.1;

    /** Least of the range 0.2 to 0.6 told among engineers; EN 12812 annex B has 0.5 from memory, which is not used. */
    private static final double STEEL_ON_WOOD = 0.2;

    /**
     * What a post carries.
     *
     * @param greatest load (N), not negative
     * @param least load in any case (N), 0 where the post goes slack
     * @param share of known sideways loads that comes on this post (N), NaN where it is not known
     * @param lean greatest angle out of plumb (rad)
     */
    record Demand(double greatest, double least, double share, double lean) {

        double force() {
            return Math.max(NOTIONAL * greatest, greatest * StrictMath.tan(lean) + share);
        }

        boolean nearlyOpens() {
            return least <= NEARLY_OPEN * greatest;
        }
    }

    private SidewaysJudge() {}

    static Finding judge(Shore shore, Post post, Demand demand) {
        if (Double.isNaN(demand.share())) {
            return new CheckResult.NotChecked(
                    "sideways loads are given, and what holds the floor against them is not declared in both directions");
        }
        return Worse.of(head(shore, post, demand), foot(post, demand));
    }

    private static Finding head(Shore shore, Post post, Demand demand) {
        if (post.ends().head() instanceof Post.Fastened fastened) {
            Finding stated = stated(fastened, "head", demand.force());
            return fastened.screws() instanceof LagScrews screws
                    ? lowest(fastened, stated, lagged(shore, post, screws, demand.force()))
                    : stated;
        }
        return post.ends().head() instanceof Post.Unfastened
                ? friction("head", STEEL_ON_WOOD, demand)
                : undeclared("head");
    }

    private static Finding foot(Post post, Demand demand) {
        if (post.ends().foot() instanceof Post.Fastened fastened) {
            return fastened.screws() instanceof LagScrews && Double.isNaN(fastened.sideways())
                    ? new CheckResult.NotChecked(
                            "lag screws at the foot are not judged; state what they carry sideways")
                    : stated(fastened, "foot", demand.force());
        }
        if (post.ends().foot() instanceof Post.Undeclared) {
            return undeclared("foot");
        }
        return post.footing() instanceof Pad pad
                ? friction("foot", coefficient(pad.kind()), demand)
                : new CheckResult.NotChecked("no pad is named, so what the foot stands on is not known (declare: pad)");
    }

    private static double coefficient(Pad.Kind kind) {
        return switch (kind) {
            case CONCRETE, SLAB -> STEEL_ON_CONCRETE;
            case STEEL -> STEEL_ON_STEEL;
            case TIMBER, CRIB -> STEEL_ON_WOOD;
        };
    }

    private static Finding lagged(Shore shore, Post post, LagScrews screws, double force) {
        return post.type() instanceof PostType type
                ? new LagCapacity(shore.beam(), type.head(), screws).judge(force)
                : new CheckResult.NotChecked("no post type is named, so the plate under the lag screws is not known");
    }

    /** Both what is stated and what is worked out must hold; without a statement the latter stands alone. */
    private static Finding lowest(Post.Fastened fastened, Finding stated, Finding lagged) {
        return Double.isNaN(fastened.sideways()) ? lagged : Worse.of(stated, lagged);
    }

    private static Finding stated(Post.Fastened fastened, String end, double force) {
        return Double.isNaN(fastened.sideways())
                ? new CheckResult.NotChecked(
                        "what the fastening of the " + end + " carries sideways (" + fastened.by() + ") is not stated")
                : new CheckResult.Judged(Measure.FORCE, force, fastened.sideways());
    }

    private static Finding friction(String end, double coefficient, Demand demand) {
        return demand.nearlyOpens()
                ? new CheckResult.Refused(
                        Measure.FORCE,
                        demand.force(),
                        "nothing fastens the " + end + " and its load falls to a tenth or less of its greatest, where"
                                + " friction is not counted")
                : new CheckResult.Judged(Measure.FORCE, demand.force(), coefficient * demand.least() / SAFETY);
    }

    private static Finding undeclared(String end) {
        return new CheckResult.NotChecked(
                "what holds the " + end + " of the post sideways is not declared (declare: " + end + ")");
    }
}
