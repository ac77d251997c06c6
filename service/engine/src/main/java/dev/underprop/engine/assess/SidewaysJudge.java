package dev.underprop.engine.assess;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.LagScrews;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.Shore;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;

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

    private static final Citation LISTED = Citation.remembered(
            "EN 12812", "2008", "annex B, least of the coefficients listed; on concrete also HSE RR 071");
    private static final Citation TOLD =
            Citation.remembered("common practice, no source", "", "steel on wood, least of the range 0.2 to 0.6");
    private static final Citation OVER = Citation.remembered("EN 12812", "2008", "friction over 1.5");

    /** Part of the load that stands for what is not foreseen. */
    static final double NOTIONAL = 0.025;

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

        double force(Working working) {
            double notional = notional(greatest, working);
            working.plan("θ", "lean", Dimension.ANGLE, lean);
            working.plan("Hs", "share of known sideways loads", Dimension.FORCE, share);
            double leaning = working.step(
                    "Hl",
                    "what lean pushes, with it",
                    Dimension.FORCE,
                    greatest * StrictMath.tan(lean) + share,
                    "P × tan( θ ) + Hs");
            return working.step(
                    "F", "sideways force, the larger", Dimension.FORCE, Math.max(notional, leaning), "max( H , Hl )");
        }

        boolean nearlyOpens() {
            return least <= NEARLY_OPEN * greatest;
        }
    }

    private SidewaysJudge() {}

    /** Part of a load that stands for what is not foreseen (N). */
    static double notional(double load, Working working) {
        working.analysis("P", "greatest load of the post", Dimension.FORCE, load);
        working.rule("c", "part of it that stands for the unforeseen", Dimension.NUMBER, NOTIONAL, RULE, "");
        return working.rule("H", "sideways force", Dimension.FORCE, NOTIONAL * load, RULE, "c × P");
    }

    /** A sideways force against what holds, as the plan states it. */
    static Finding held(double force, double capacity, Working working) {
        double holds = working.plan("Hc", "what holds it, as stated", Dimension.FORCE, capacity);
        return working.compared("H", "Hc", new CheckResult.Judged(Measure.FORCE, force, holds));
    }

    /** As {@link #judge(Shore, Post, Demand, Working)}, without a record. */
    static Finding judge(Shore shore, Post post, Demand demand) {
        return judge(shore, post, demand, Working.OFF);
    }

    static Finding judge(Shore shore, Post post, Demand demand, Working working) {
        if (Double.isNaN(demand.share())) {
            return new CheckResult.NotChecked(
                    "sideways loads are given, and what holds the floor against them is not declared in both directions");
        }
        Working above = working.branch();
        Working below = working.branch();
        Finding head = head(shore, post, demand, above);
        Finding worst = Worse.of(head, foot(post, demand, below));
        working.adopt(worst == head ? above : below);
        return worst;
    }

    private static Finding head(Shore shore, Post post, Demand demand, Working working) {
        if (post.ends().head() instanceof Post.Fastened fastened) {
            double force = demand.force(working);
            Working screwed = working.branch();
            Finding stated = stated(fastened, "head", force, working);
            return fastened.screws() instanceof LagScrews screws
                    ? lowest(fastened, stated, lagged(shore, post, screws, force, screwed), working, screwed)
                    : stated;
        }
        return post.ends().head() instanceof Post.Unfastened
                ? friction("head", STEEL_ON_WOOD, demand, working)
                : undeclared("head");
    }

    private static Finding foot(Post post, Demand demand, Working working) {
        if (post.ends().foot() instanceof Post.Fastened fastened) {
            return fastened.screws() instanceof LagScrews && Double.isNaN(fastened.sideways())
                    ? new CheckResult.NotChecked(
                            "lag screws at the foot are not judged; state what they carry sideways")
                    : stated(fastened, "foot", demand.force(working), working);
        }
        if (post.ends().foot() instanceof Post.Undeclared) {
            return undeclared("foot");
        }
        return post.footing() instanceof Pad pad
                ? friction("foot", coefficient(pad.kind()), demand, working)
                : new CheckResult.NotChecked("no pad is named, so what the foot stands on is not known (declare: pad)");
    }

    private static double coefficient(Pad.Kind kind) {
        return switch (kind) {
            case CONCRETE, SLAB -> STEEL_ON_CONCRETE;
            case STEEL -> STEEL_ON_STEEL;
            case TIMBER, CRIB -> STEEL_ON_WOOD;
        };
    }

    private static Finding lagged(Shore shore, Post post, LagScrews screws, double force, Working working) {
        return post.type() instanceof PostType type
                ? new LagCapacity(shore.beam(), type.head(), screws).judge(force, working)
                : new CheckResult.NotChecked(
                        "no post type is named, so the plate under the lag screws is not known (declare: type)");
    }

    /** Both what is stated and what is worked out must hold; without a statement the latter stands alone. */
    private static Finding lowest(
            Post.Fastened fastened, Finding stated, Finding lagged, Working working, Working screwed) {
        Finding worst = Double.isNaN(fastened.sideways()) ? lagged : Worse.of(stated, lagged);
        if (worst == lagged) {
            working.adopt(screwed);
        }
        return worst;
    }

    private static Finding stated(Post.Fastened fastened, String end, double force, Working working) {
        if (!Double.isNaN(fastened.sideways())) {
            String meaning = "what the fastening of the " + end + " carries";
            double holds = working.plan("Fc", meaning, Dimension.FORCE, fastened.sideways());
            return working.compared("F", "Fc", new CheckResult.Judged(Measure.FORCE, force, holds));
        }
        return new CheckResult.NotChecked("what the fastening of the " + end + " carries sideways (" + fastened.by()
                + ") is not stated (declare: sideways)");
    }

    private static Finding friction(String end, double coefficient, Demand demand, Working working) {
        double force = demand.force(working);
        if (demand.nearlyOpens()) {
            String why = "nothing fastens the " + end + " and its load falls to a tenth or less of its greatest, where"
                    + " friction is not counted";
            return working.compared("F", "", new CheckResult.Refused(Measure.FORCE, force, why));
        }
        working.analysis("Pmin", "least load of the post", Dimension.FORCE, demand.least());
        working.rule(
                "μ",
                "friction, least listed",
                Dimension.NUMBER,
                coefficient,
                coefficient == STEEL_ON_WOOD ? TOLD : LISTED,
                "");
        working.rule("s", "factor of safety of friction", Dimension.NUMBER, SAFETY, OVER, "");
        double holds = working.step(
                "Ff", "friction at the " + end, Dimension.FORCE, coefficient * demand.least() / SAFETY, "μ × Pmin / s");
        return working.compared("F", "Ff", new CheckResult.Judged(Measure.FORCE, force, holds));
    }

    private static Finding undeclared(String end) {
        return new CheckResult.NotChecked(
                "what holds the " + end + " of the post sideways is not declared (declare: " + end + ")");
    }
}
