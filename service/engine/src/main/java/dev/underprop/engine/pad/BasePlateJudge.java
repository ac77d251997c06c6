package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.aci318_19.Section14_5_6;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
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
    public static Finding judge(Post post, Material material, double load, double factoredLoad, Working working) {
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
            case CONCRETE, SLAB -> concrete(plate, pad, material.strength(), factoredLoad, working);
            case TIMBER, CRIB ->
                pad.make() instanceof Pad.Mat mat && mat.spread() instanceof Pad.SpreadPlate steel
                        ? SpreadPad.pressed(plate, steel, load, working)
                        : timber(plate, pad, material.bearing(), load, working);
            case STEEL ->
                new CheckResult.NotChecked("a base plate on a steel pad is not judged; have the pair looked at");
        };
    }

    private static Finding concrete(Plate plate, Pad pad, double strength, double factoredLoad, Working working) {
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
        working.plan("a", "plate along the beam, as far as the pad", Dimension.LENGTH, along);
        working.plan("w", "plate across the beam, as far as the pad", Dimension.LENGTH, across);
        double loaded = working.step("A1", "area pressed", Dimension.AREA, along * across, "a × w");
        double support = support(along, across, pad, working);
        working.plan("f'c", "strength of the concrete", Dimension.STRESS, strength);
        Outcome bearing = Section14_5_6.bearing(strength, loaded, support);
        working.rule(
                "φBn",
                bearing,
                "design bearing strength, φ = 0.60",
                Dimension.FORCE,
                "0.6 × 0.85 × f'c × A1 × min( 2 , root( A2 / A1 ) )");
        working.analysis("Pu", "greatest load, strength combinations", Dimension.FORCE, factoredLoad);
        return bearing instanceof Outcome.Value value
                ? working.compared(
                        "Pu",
                        "φBn",
                        new CheckResult.Judged(
                                Measure.FORCE, factoredLoad, value.cited().value()))
                : working.compared(
                        "Pu",
                        "",
                        new CheckResult.Refused(Measure.FORCE, factoredLoad, ((Outcome.Refused) bearing).reason()));
    }

    private static double support(double along, double across, Pad pad, Working working) {
        working.plan("pa", "pad along the beam", Dimension.LENGTH, pad.along());
        working.plan("pw", "pad across the beam", Dimension.LENGTH, pad.across());
        working.plan("h", "thickness of the pad", Dimension.LENGTH, pad.thickness());
        return working.rule(
                Section14_5_6.support(along, across, pad.along(), pad.across(), pad.thickness()),
                "area that it spreads to, 1 down to 2 out",
                Dimension.AREA,
                "min( 1 + 4 × h / max( a , w ) , min( pa / a , pw / w ) )^2 × a × w");
    }

    private static Finding timber(Plate plate, Pad pad, double bearing, double load, Working working) {
        if (Double.isNaN(bearing)) {
            return new CheckResult.NotChecked("what the timber of pad " + pad.name()
                    + " bears across the grain under the plate is not stated (declare: "
                    + (pad.kind() == Pad.Kind.CRIB ? "crib" : "mat") + ")");
        }
        working.analysis("P", "greatest load of the post", Dimension.FORCE, load);
        working.plan("a", "plate along the beam", Dimension.LENGTH, plate.along());
        working.plan("w", "plate across the beam", Dimension.LENGTH, plate.across());
        double stress = working.rule(
                "fc⊥",
                "stress across the grain",
                Dimension.STRESS,
                load / (plate.along() * plate.across()),
                TIMBER,
                "P / ( a × w )");
        working.plan("F'c⊥", "what the timber bears under the plate", Dimension.STRESS, bearing);
        return working.compared("fc⊥", "F'c⊥", new CheckResult.Judged(Measure.STRESS, stress, bearing));
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
