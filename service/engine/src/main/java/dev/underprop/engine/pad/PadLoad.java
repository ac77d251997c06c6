package dev.underprop.engine.pad;

import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.Telescope;
import dev.underprop.engine.plan.TimberPost;
import java.util.stream.DoubleStream;

/**
 * What a post brings on its pad.
 *
 * @param greatest load in the allowable stress combinations (N), not negative
 * @param factored greatest load in the strength combinations (N), not negative, NaN where they were not solved
 * @param lean sideways force over load, not negative
 * @param foot where on its foot the load may act
 */
public record PadLoad(double greatest, double factored, double lean, Foot foot) {

    public PadLoad {
        if (!(greatest >= 0) || factored < 0 || !(lean >= 0)) {
            throw new IllegalArgumentException("loads of a pad are not negative");
        }
    }

    /** Of a post of a plan. @param type says how far off the middle its load acts, or does not */
    public static PadLoad on(Post.Type type, double greatest, double factored, Limits.Plumb plumb) {
        return new PadLoad(greatest, factored, lean(plumb), Foot.of(type));
    }

    /**
     * Where on the foot of its post a load may act.
     *
     * @param off how far off the middle, in any direction (m), not negative
     * @param stated whether somebody states it; else it is {@link PostType.Pipe#ECCENTRICITY}, as of a tube
     */
    public record Foot(double off, boolean stated) {

        /** Of a post of which nothing is said. */
        public static final Foot USUAL = new Foot(PostType.Pipe.ECCENTRICITY, false);

        public Foot {
            if (!(off >= 0)) {
                throw new IllegalArgumentException("how far off the middle a load acts is not negative");
            }
        }

        /** The greatest that the type of a post states of its foot, or that its make is judged with. */
        public static Foot of(Post.Type type) {
            if (!(type instanceof PostType known)) {
                return USUAL;
            }
            double tube = known.tube() instanceof PostType.Pipe pipe ? pipe.eccentricity() : Double.NaN;
            double shaft = known.shaft() instanceof TimberPost timber
                    ? timber.eccentricity()
                    : known.shaft() instanceof Telescope telescope ? telescope.eccentricity() : Double.NaN;
            return DoubleStream.of(known.eccentricity(), tube, shaft)
                    .filter(off -> !Double.isNaN(off))
                    .mapToObj(off -> new Foot(off, true))
                    .reduce(Foot::further)
                    .orElse(USUAL);
        }

        /** The one that is further off. */
        public Foot further(Foot other) {
            return other.off > off ? other : this;
        }
    }

    /** Least sideways force of a post over its load: BS 5975 practice, from memory. */
    public static final double NOTIONAL = 0.025;

    /** What a post that leans pushes sideways on its pad over its load; known sideways forces go into what holds the floor. */
    public static double lean(Limits.Plumb plumb) {
        return Math.max(NOTIONAL, StrictMath.tan(plumb.lean()));
    }

    /** Sideways force over upright force under the pad. @param total load with the pad's weight (N) */
    double tilt(double total) {
        return greatest > 0 ? lean * greatest / total : 0;
    }
}
