package dev.underprop.engine.lift;

import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.Situation;
import dev.underprop.engine.standard.Admissible;
import java.util.List;

/**
 * What a lift is to do and what it must keep.
 *
 * @param during what is taken away while the screws are turned
 * @param survey levels as found
 * @param target where the floor is to come
 * @param limits what no turn may exceed
 * @param screws by post: shore by shore, post by post, in the plan's order
 * @param order in which posts are turned
 * @param crept what share of the sag has become permanent
 * @param progress what was done and read already
 * @param after what happens once the floor is up
 * @param jacks beside the posts that are raised: each lifts its post free, whose screw then follows without load; empty where
 *     screws are turned under load
 */
public record LiftRequest(
        Situation during,
        Survey survey,
        Target target,
        LiftLimits limits,
        List<LiftScrew> screws,
        Order order,
        Crept crept,
        Progress progress,
        After after,
        List<Jack> jacks) {

    /** A lift by the posts' own screws, turned under load. */
    public LiftRequest(
            Situation during,
            Survey survey,
            Target target,
            LiftLimits limits,
            List<LiftScrew> screws,
            Order order,
            Crept crept,
            Progress progress,
            After after) {
        this(during, survey, target, limits, screws, order, crept, progress, after, List.of());
    }

    public LiftRequest {
        screws = List.copyOf(screws);
        jacks = List.copyOf(jacks);
    }

    /** Whether posts are lifted free of their screws by jacks beside them. */
    public boolean byJacks() {
        return !jacks.isEmpty();
    }

    /**
     * A jack beside a post.
     *
     * @param post the post that it lifts free, counted over all shores
     * @param stand place, height with its packing, strength and pad, as those of a post under the same shore
     * @param stroke how far it can lift from where it touches (m), positive
     */
    public record Jack(int post, Post stand, double stroke) {
        public Jack {
            Admissible.positive(stroke, "stroke");
        }
    }

    /** The same lift with other limits. */
    LiftRequest with(LiftLimits other) {
        return new LiftRequest(during, survey, target, other, screws, order, crept, progress, after, jacks);
    }

    /** The same lift with other screws. */
    LiftRequest with(List<LiftScrew> other) {
        return new LiftRequest(during, survey, target, limits, other, order, crept, progress, after, jacks);
    }

    /**
     * Levels as found.
     *
     * @param points where they were read
     * @param tolerance how far a reading may be off (m), positive
     */
    public record Survey(List<Point> points, double tolerance) {
        public Survey {
            points = List.copyOf(points);
            Admissible.positive(tolerance, "reading tolerance");
        }
    }

    /**
     * A place of the floor whose level was read.
     *
     * @param name as the plan calls it
     * @param x (m)
     * @param y (m)
     * @param level as found (m), upward positive, from the job's datum
     * @param target its own target level (m), NaN where it has none
     */
    public record Point(String name, double x, double y, double level, double target) {
        public Point {
            Admissible.finite(x, "x");
            Admissible.finite(y, "y");
            Admissible.finite(level, "level");
        }
    }

    /**
     * Where the floor is to come.
     *
     * @param plane the target of every point that has none of its own
     * @param asFar whether the lift may end where limits stop it, short of its targets
     */
    public record Target(Plane plane, boolean asFar) {}

    /**
     * Target levels.
     *
     * @param level at x = y = 0 (m)
     * @param along rise along x, 0 where the floor is to be level
     * @param across rise along y
     */
    public record Plane(double level, double along, double across) {
        /** Only points with targets of their own are asked to move. */
        public static final Plane NONE = new Plane(Double.NaN, 0, 0);

        double at(double x, double y) {
            return level + along * x + across * y;
        }
    }

    /** In which order posts are turned within a pass. Ties fall to the turn that leaves most in hand, then to position. */
    public enum Order {
        MOST_TO_GO_FIRST,
        MIDDLE_OUTWARD,
        ENDS_INWARD
    }

    /**
     * Share of the sag that has become permanent: 0 where it is all elastic, 1 where timber has crept into its shape.
     *
     * @param least from 0 to 1
     * @param most not less
     */
    public record Crept(double least, double most) {
        /** Nothing is known. */
        public static final Crept UNKNOWN = new Crept(0, 1);

        public Crept {
            if (!(least >= 0 && most >= least && most <= 1)) {
                throw new IllegalArgumentException("a crept share runs from 0 to 1");
            }
        }
    }

    /**
     * What was done and read already.
     *
     * @param turned how far each screw has been raised so far (m), by post
     * @param readings level of each point of the survey now (m), empty where nothing was read
     */
    public record Progress(List<Double> turned, List<Double> readings) {
        /** Nothing yet. */
        public static final Progress NONE = new Progress(List.of(), List.of());

        public Progress {
            turned = List.copyOf(turned);
            readings = List.copyOf(readings);
        }

        boolean begun() {
            return !readings.isEmpty();
        }
    }

    /**
     * What happens once the floor is up.
     *
     * @param onto bearings that are built up snug to the raised floor before the posts are let down and taken out; empty
     *     where the posts stay
     */
    public record After(List<Integer> onto) {
        /** The posts stay. */
        public static final After POSTS_STAY = new After(List.of());

        public After {
            onto = List.copyOf(onto);
        }
    }
}
