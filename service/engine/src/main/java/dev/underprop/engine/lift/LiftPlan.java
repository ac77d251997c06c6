package dev.underprop.engine.lift;

import java.util.List;

/**
 * A lift that keeps every limit at every turn, or why there is none.
 *
 * @param outcome what became of it
 * @param reason in words where no turn may be made, else empty
 * @param posts what becomes of every post
 * @param points what becomes of every surveyed point
 * @param stages in order; where the lift ends early, those that could be made
 * @param count stages against the least there can be
 * @param broken limits that are broken as found; no turn makes them worse
 * @param open what could not be checked, in words
 * @param remarks what else must be known
 * @param obstacle what stopped the lift
 * @param release letting the posts down and taking them out
 * @param basis what was assumed
 */
public record LiftPlan(
        Outcome outcome,
        String reason,
        List<PostCourse> posts,
        List<PointCourse> points,
        List<Stage> stages,
        Count count,
        List<Running> broken,
        List<String> open,
        List<Remark> remarks,
        Obstacle obstacle,
        Release release,
        Basis basis) {

    public LiftPlan {
        posts = List.copyOf(posts);
        points = List.copyOf(points);
        stages = List.copyOf(stages);
        broken = List.copyOf(broken);
        open = List.copyOf(open);
        remarks = List.copyOf(remarks);
    }

    /** What became of the request. */
    public enum Outcome {
        /** All targets are reached and everything was checked. */
        PLANNED,
        /**
         * All targets are reached and something needed could not be checked; or no turn is issued, and the reason says why:
         * readings are off in a way that is not bounded, or the search was given up.
         */
        INCOMPLETE,
        /** The lift ends short of its targets, as asked, where a limit stops it. */
        SHORT,
        /** Some limit stops it. */
        IMPOSSIBLE,
        /** The floor does not stand before anything is turned. */
        UNSTABLE
    }

    /**
     * A post.
     *
     * @param name in the plan's names
     * @param found level of the floor over it as found, or as read last (m)
     * @param target level there (m), NaN where it is not asked to move
     * @param wanted raise that brings it there (m)
     * @param planned raise of its screw in this plan (m), rounded to its smallest turn; less where the lift ends early
     * @param turns the same in turns of the screw
     * @param height at which it stands in the end (m)
     * @param travel how far its screw can still be raised then (m), NaN where not stated
     */
    public record PostCourse(
            String name,
            double found,
            double target,
            double wanted,
            double planned,
            double turns,
            double height,
            double travel) {
        /** What rounding or an early end leaves (m). */
        public double left() {
            return wanted - planned;
        }
    }

    /**
     * A surveyed point.
     *
     * @param point as surveyed
     * @param target its target (m), NaN where it has none
     * @param start level when the plan begins (m)
     * @param end level when it ends (m)
     * @param reading what was read, where something was
     */
    public record PointCourse(LiftRequest.Point point, double target, Span start, Span end, Reading reading) {}

    /**
     * A reading against what was expected.
     *
     * @param level read (m), NaN where nothing was
     * @param expected from turns and survey (m)
     * @param off how far it is outside what was expected (m), tolerance included: negative when low, 0 when within
     */
    public record Reading(double level, Span expected, double off) {
        static final Reading NONE = new Reading(Double.NaN, Span.UNKNOWN, 0);
    }

    /**
     * What is turned between two holds.
     *
     * @param number from 1
     * @param start hours after the first stage, for holds and the limit per day
     * @param passes rounds through the posts
     * @param levels of every point once the stage is done (m)
     * @param loads of every post once it is done, under dead load (N)
     * @param governing the limit of each kind of which most is used after any of its turns
     */
    public record Stage(
            int number,
            double start,
            List<List<Turn>> passes,
            List<Span> levels,
            List<Span> loads,
            List<Running> governing) {
        public Stage {
            passes = List.copyOf(passes);
            levels = List.copyOf(levels);
            loads = List.copyOf(loads);
            governing = List.copyOf(governing);
        }

        /** All its turns in order. */
        public List<Turn> turns() {
            return passes.stream().flatMap(List::stream).toList();
        }
    }

    /**
     * One turn of one screw.
     *
     * @param post which, counted over all shores
     * @param name in the plan's names
     * @param turns of the screw; negative when it is let down
     * @param raise the same as a raise (m)
     * @param raised of its screw since it was snug, this turn included (m)
     * @param height at which the post stands after it (m)
     * @param before load of the post before it, under dead load (N)
     * @param after load after it (N)
     * @param torque at the end of it (N·m)
     * @param pull on the wrench (N)
     * @param travel left after it (m), NaN where not stated
     * @param governing the limit of each kind of which most is used after it, and while a jack held the floor for it
     * @param jack that holds the beam clear of the post while the screw is turned
     */
    public record Turn(
            int post,
            String name,
            double turns,
            double raise,
            double raised,
            double height,
            Span before,
            Span after,
            Span torque,
            Span pull,
            double travel,
            List<Running> governing,
            JackUse jack) {
        public Turn {
            governing = List.copyOf(governing);
        }
    }

    /**
     * What a jack does for one turn.
     *
     * @param name in the plan's names; empty where the screw is turned under load
     * @param load it carries while the post is free, under dead load (N)
     * @param lift how far it lifts from where it touches (m)
     */
    public record JackUse(String name, Span load, Span lift) {
        /** The screw is turned under load. */
        public static final JackUse NONE = new JackUse("", Span.UNKNOWN, Span.UNKNOWN);
    }

    /**
     * How much of a limit is used.
     *
     * @param limit which
     * @param value against {@link Limit#allowed}
     * @param used the part of it that is used
     */
    public record Running(Limit limit, double value, double used) {}

    /**
     * Stages against the least there can be.
     *
     * @param stages planned
     * @param least largest raise, less the smallest turn that rounding may leave, over the limit per stage, rounded up
     * @param largest largest raise (m)
     * @param why in words where more are planned, else empty
     */
    public record Count(int stages, int least, double largest, String why) {}

    /**
     * What must be known besides.
     *
     * @param kind what it is about
     * @param place in the plan's names, empty where it concerns the whole
     * @param words a sentence
     */
    public record Remark(Kind kind, String place, String words) {
        /** What remarks are about. */
        public enum Kind {
            ROUNDING,
            READING,
            WRENCH,
            SCREW,
            TARGET,
            ASSUMED
        }
    }

    /** What stopped a lift. */
    public sealed interface Obstacle {}

    /** Nothing. */
    public record NoObstacle() implements Obstacle {}

    /**
     * A limit.
     *
     * @param stage in which it stops (from 1)
     * @param post whose smallest turn came nearest to being possible
     * @param raised how far that post had been raised (m)
     * @param limit the limit that stops it
     * @param value that the turn would bring
     * @param moves what would move without resistance, in words; empty where a limit stops it
     * @param help what would let it go on, least change first
     */
    public record Stopped(
            int stage, String post, double raised, Limit limit, double value, String moves, List<Help> help)
            implements Obstacle {
        public Stopped {
            help = List.copyOf(help);
        }
    }

    /**
     * A change that would let the lift go on to its targets.
     *
     * @param words what to change
     * @param limit the limit to be changed
     * @param needed the value that it would have to allow, NaN where something else is changed
     */
    public record Help(String words, Limit limit, double needed) {}

    /** What becomes of the posts once the floor is up. */
    public sealed interface Release {}

    /** They stay. */
    public record Stay() implements Release {}

    /**
     * They are let down and taken out.
     *
     * @param onto what carries the floor then, in the plan's names
     * @param lowered how far each is let down until it carries nothing (m), by post
     * @param stages in order
     * @param levels of every point once no post carries anything (m)
     */
    public record LetDown(List<String> onto, List<Double> lowered, List<Stage> stages, List<Span> levels)
            implements Release {
        public LetDown {
            onto = List.copyOf(onto);
            lowered = List.copyOf(lowered);
            stages = List.copyOf(stages);
            levels = List.copyOf(levels);
        }
    }

    /**
     * They cannot be let down.
     *
     * @param reason in words
     */
    public record CannotLetDown(String reason) implements Release {}

    /**
     * What the plan rests on.
     *
     * @param combinations of gravity loads under which every turn was looked at
     * @param bounds ways in which things were taken to be
     * @param said what was taken that the plan does not state
     * @param solved contact solves
     */
    public record Basis(List<String> combinations, List<String> bounds, List<String> said, int solved) {
        public Basis {
            combinations = List.copyOf(combinations);
            bounds = List.copyOf(bounds);
            said = List.copyOf(said);
        }
    }
}
