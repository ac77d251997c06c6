package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;

/** The strength of a pad itself, by the rule for what it is made of. */
public final class PadStrength {

    private static final Citation CONCRETE =
            Citation.remembered("ACI", "318-19", "chapter 14 with 13.2.7.1 and Table 21.2.1");
    private static final Citation SLAB = Citation.remembered(
            "Huang, Pavement Analysis and Design", "2nd edition", "4.2.1 (Westergaard), with ACI 318-19 chapter 14");
    private static final Citation STEEL = Citation.remembered("AISC", "360-16", "F11.1");
    private static final Citation RATED =
            Citation.remembered("common practice, no source", "", "a pad out of stock by the rating given for it");
    private static final Citation NONE =
            Citation.remembered("common practice, no source", "", "a pad is judged by what it is made of");

    private PadStrength() {}

    /**
     * Judges the pad of one post.
     *
     * @param nearest distance to the nearest other post that stands on a slab (m), infinite where there is none
     */
    public static Finding judge(Post post, Ground ground, PadLoad load, double nearest, Working working) {
        if (!(post.footing() instanceof Pad pad)) {
            return new CheckResult.NotChecked("no pad is named under this post (declare: pad)");
        }
        if (pad.make() instanceof Pad.Block block) {
            return block(pad, block, load.greatest(), working);
        }
        if (pad.make() instanceof Pad.Rated rated) {
            working.analysis("P", "greatest load of the post", Dimension.FORCE, load.greatest());
            working.plan("R", "rating of the pad", Dimension.FORCE, rated.load());
            return working.compared("P", "R", new CheckResult.Judged(Measure.FORCE, load.greatest(), rated.load()));
        }
        if (pad.make() instanceof Pad.Unmade) {
            return new CheckResult.NotChecked(missing(pad));
        }
        if (!(post.type() instanceof PostType type)) {
            return new CheckResult.NotChecked("no post type is named, so the base plate is not known (declare: type)");
        }
        if (!pad.holds(type.base())) {
            return new CheckResult.NotChecked("the base plate reaches beyond its pad");
        }
        return pad.make() instanceof Pad.SlabPart slab
                ? SlabPad.judge(pad, slab, ground, type.base(), new SlabPad.Demand(load.factored(), nearest), working)
                : centred(pad, type, load, working);
    }

    private static Finding centred(Pad pad, PostType type, PadLoad load, Working working) {
        if (!(pad.centring() instanceof Pad.Within centring)) {
            return uncentred(pad);
        }
        Plate base = type.base();
        double off = OffCentre.of(pad, centring, load, working);
        if (pad.make() instanceof Pad.Stack crib) {
            return CribPad.judge(pad, crib, base, load.greatest(), off, working);
        }
        if (pad.make() instanceof Pad.Mat mat) {
            return MatPad.judge(pad, mat, base, load.greatest(), off, working);
        }
        return pad.make() instanceof Pad.Plate plate
                ? SteelPad.judge(pad, plate.yield(), base, load.greatest(), off, working)
                : CastPad.judge(pad, pad.make().strength(), base, new CastPad.Demand(load.factored(), off), working);
    }

    /** How far a post may stand off the middle of its pad as the plan states it (m); 0 where it does not. */
    static double aside(Pad pad) {
        return pad.centring() instanceof Pad.Within within ? within.distance() : 0;
    }

    private static Finding block(Pad pad, Pad.Block block, double load, Working working) {
        working.analysis("P", "greatest load of the post", Dimension.FORCE, load);
        Finding finding = block.hollow()
                ? new CheckResult.Refused(
                        Measure.FORCE, load, "a hollow block splits under a post, whatever it is rated for in a wall")
                : new CheckResult.NotChecked(
                        "no rating with its source is given for the block " + pad.name() + " (declare: rating)");
        return working.compared("P", "", finding);
    }

    static Finding unfactored() {
        return new CheckResult.NotChecked("the post's load in the strength combinations is not known");
    }

    static Finding uncentred(Pad pad) {
        return new CheckResult.NotChecked(
                "how far a post may stand off the middle of pad " + pad.name() + " is not stated (declare: centring)");
    }

    private static String missing(Pad pad) {
        return switch (pad.kind()) {
            case CONCRETE ->
                "whether pad " + pad.name()
                        + " is cast in place, a solid or a hollow block is not stated (declare: make)";
            case TIMBER ->
                "neither the timbers of mat " + pad.name() + " nor a rating with its source are given (declare: mat)";
            case STEEL ->
                "neither yield stress nor a rating with its source is given for pad " + pad.name()
                        + " (declare: yieldStress)";
            case SLAB ->
                "how the thickness of slab " + pad.name() + " was measured is not stated (declare: thicknessMeasured)";
            case CRIB -> "the timbers of crib " + pad.name() + " are not described (declare: crib)";
        };
    }

    /** The rule that judges this post's pad. */
    public static Citation citation(Post post) {
        if (!(post.footing() instanceof Pad pad)) {
            return NONE;
        }
        Pad.Make make = pad.make();
        if (make instanceof Pad.Cast) {
            return CONCRETE;
        }
        if (make instanceof Pad.SlabPart) {
            return SLAB;
        }
        if (make instanceof Pad.Stack) {
            return CribPad.RULE;
        }
        if (make instanceof Pad.Mat) {
            return MatPad.RULE;
        }
        return make instanceof Pad.Plate ? STEEL : make instanceof Pad.Rated ? RATED : NONE;
    }

    /** Whether the load that counts is that of the strength combinations. */
    public static boolean factored(Post post) {
        return post.footing() instanceof Pad pad
                && (pad.make() instanceof Pad.Cast || pad.make() instanceof Pad.SlabPart);
    }

    /** What the timber under the base plate bears across the grain (Pa), NaN where it is not known or there is none. */
    public static double acrossGrain(Post post) {
        if (!(post.footing() instanceof Pad pad) || !(post.type() instanceof PostType type)) {
            return Double.NaN;
        }
        if (pad.make() instanceof Pad.Stack crib) {
            return crib.solid() ? crib.bearing() : Double.NaN;
        }
        return pad.make() instanceof Pad.Mat mat ? MatPad.bearing(pad, mat, type.base()) : Double.NaN;
    }
}
