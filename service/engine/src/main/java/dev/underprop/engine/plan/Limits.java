package dev.underprop.engine.plan;

/**
 * Tolerances and limits that a plan may state.
 *
 * @param fitUp how far one post's head may be out of line with its neighbours (m)
 * @param transfer change of slope of the floor that the house may suffer when a bearing is taken away
 * @param plumb how far a post may lean
 * @param settlement how far pads may settle, or that it is not stated
 */
public record Limits(FitUp fitUp, Transfer transfer, Plumb plumb, Settlement settlement) {

    /** Limits that say nothing of settlement. */
    public Limits(FitUp fitUp, Transfer transfer, Plumb plumb) {
        this(fitUp, transfer, plumb, new NoSettlement());
    }

    /** Limits that say nothing of plumb. */
    public Limits(FitUp fitUp, Transfer transfer) {
        this(fitUp, transfer, Plumb.DEFAULT);
    }

    /** 1/16 in (m). */
    private static final double SIXTEENTH = 0.0254 / 16;

    /** The named defaults. */
    public static final Limits DEFAULT = new Limits(
            new FitUp(SIXTEENTH, false),
            new Transfer(1.0 / 500, "1/500, buildings that must not crack (angular distortion, Bjerrum 1963)", false));

    /**
     * Fit-up.
     *
     * @param tolerance (m), not negative
     * @param stated whether the plan states it
     */
    public record FitUp(double tolerance, boolean stated) {
        public FitUp {
            Sense.notNegative(tolerance, "fit-up tolerance");
        }
    }

    /**
     * Damage limit.
     *
     * @param slope movement over distance to the next line of support, positive
     * @param name the criterion in words
     * @param stated whether the plan states it
     */
    public record Transfer(double slope, String name, boolean stated) {
        public Transfer {
            Sense.positive(slope, "damage limit");
        }
    }

    /**
     * Plumb.
     *
     * @param lean greatest angle between a post and the plumb line (rad), from 0 to below a quarter turn
     * @param stated whether the plan states it
     */
    public record Plumb(double lean, boolean stated) {
        /** The named default, 1.5 degrees: BS 5975 practice for props, from memory. */
        public static final Plumb DEFAULT = new Plumb(Math.PI / 120, false);

        public Plumb {
            Sense.notNegative(lean, "lean");
            if (!(lean < Math.PI / 2)) {
                throw new IllegalArgumentException("a lean must be less than a quarter turn");
            }
        }
    }

    /** How far pads may settle. It has no default. */
    public sealed interface Settlement {}

    /** Not stated. */
    public record NoSettlement() implements Settlement {}

    /**
     * Stated.
     *
     * @param total of one pad (m), positive
     * @param slope difference of two pads of a shore over their distance, positive
     * @param name what the limits stand for, in words
     */
    public record Settles(double total, double slope, String name) implements Settlement {
        public Settles {
            Sense.positive(total, "settlement limit");
            Sense.positive(slope, "settlement limit");
        }
    }
}
