package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.clause.aci318_19.Section14_5_6;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;

/** The base plate pressed on its pad, an even pressure under the whole plate. */
public final class BasePlateJudge {

    static final Citation CONCRETE = Citation.remembered("ACI", "318-19", "14.5.6, strength combinations");
    static final Citation TIMBER = Citation.remembered("NDS", "2018", "3.10.2");

    /**
     * What is known of the pad's material.
     *
     * @param strength f'c of concrete (Pa), NaN where not stated
     * @param bearing allowable compression across the grain of the timber under the plate, wet where it stands wet (Pa), NaN
     *     where not stated or where the plate does not lie on timber all over
     */
    public record Material(double strength, double bearing) {
        /** Nothing is known. */
        public static final Material UNSTATED = new Material(Double.NaN, Double.NaN);
    }

    private BasePlateJudge() {}

    /**
     * @param load greatest load of the post, allowable stress combinations (N)
     * @param factoredLoad greatest load of the post, strength combinations (N), NaN where they are not solved
     */
    public static Finding judge(Post post, Material material, double load, double factoredLoad) {
        if (!(post.type() instanceof PostType type)) {
            return new CheckResult.NotChecked("no post type is named, so the base plate is not known (declare: type)");
        }
        if (!(post.footing() instanceof Pad pad)) {
            return new CheckResult.NotChecked("no pad is named under this post (declare: pad)");
        }
        Plate plate = type.base();
        if (!pad.holds(plate)) {
            return new CheckResult.NotChecked(
                    "the base plate reaches beyond its pad, so that the pressure under it is not even");
        }
        return switch (pad.kind()) {
            case CONCRETE, SLAB -> concrete(plate, pad, material.strength(), factoredLoad);
            case TIMBER, CRIB ->
                pad.make() instanceof Pad.Mat mat && mat.spread() instanceof Pad.SpreadPlate steel
                        ? SpreadPad.pressed(plate, steel, load)
                        : timber(plate, pad, material.bearing(), load);
            case STEEL ->
                new CheckResult.NotChecked("a base plate on a steel pad is not judged; have the pair looked at");
        };
    }

    private static Finding concrete(Plate plate, Pad pad, double strength, double factoredLoad) {
        if (Double.isNaN(strength)) {
            return new CheckResult.NotChecked(
                    "the strength of the concrete of pad " + pad.name() + " is not stated (declare: strength)");
        }
        if (Double.isNaN(factoredLoad)) {
            return new CheckResult.NotChecked(
                    "concrete wants factored loads, and strength combinations are not solved");
        }
        double along = Math.min(plate.along(), pad.along());
        double across = Math.min(plate.across(), pad.across());
        double support = Section14_5_6.support(along, across, pad.along(), pad.across(), pad.thickness())
                .value();
        Outcome bearing = Section14_5_6.bearing(strength, along * across, support);
        return bearing instanceof Outcome.Value value
                ? new CheckResult.Judged(
                        Measure.FORCE, factoredLoad, value.cited().value())
                : new CheckResult.Refused(Measure.FORCE, factoredLoad, ((Outcome.Refused) bearing).reason());
    }

    private static Finding timber(Plate plate, Pad pad, double bearing, double load) {
        if (Double.isNaN(bearing)) {
            return new CheckResult.NotChecked(
                    "what the timber of pad " + pad.name() + " bears across the grain under the plate is not stated");
        }
        return new CheckResult.Judged(Measure.STRESS, load / (plate.along() * plate.across()), bearing);
    }

    /** What is known of the pad under a post. */
    public static Material material(Post post) {
        return post.footing() instanceof Pad pad
                ? new Material(pad.make().strength(), PadStrength.acrossGrain(post))
                : Material.UNSTATED;
    }

    /** The rule by which a post's plate is judged. */
    public static Citation rule(Post post) {
        if (post.footing() instanceof Pad pad
                && pad.make() instanceof Pad.Mat mat
                && mat.spread() instanceof Pad.SpreadPlate) {
            return SpreadPad.PRESSED;
        }
        return factored(post) ? CONCRETE : TIMBER;
    }

    /** Whether the load is that of the strength combinations. */
    public static boolean factored(Post post) {
        return !(post.footing() instanceof Pad pad) || pad.kind() != Pad.Kind.TIMBER && pad.kind() != Pad.Kind.CRIB;
    }
}
