package dev.underprop.engine.plan;

/**
 * A pad.
 *
 * @param name as the plan calls it
 * @param kind what it is made of
 * @param along x size (m), positive
 * @param across y size (m), positive
 * @param thickness (m), positive
 * @param weight own weight, or that it is not known
 * @param make what its strength comes from
 * @param centring how far the post on it may stand off its middle
 */
public record Pad(
        String name,
        Kind kind,
        double along,
        double across,
        double thickness,
        Weight weight,
        Make make,
        Centring centring)
        implements Post.Footing {

    /** Plates that miss by less than this fit (m). */
    private static final double FIT = 1e-4;

    /** A pad of whose make and centring nothing is said. */
    public Pad(String name, Kind kind, double along, double across, double thickness, Weight weight) {
        this(name, kind, along, across, thickness, weight, new Unmade());
    }

    /** A pad of whose centring nothing is said. */
    public Pad(String name, Kind kind, double along, double across, double thickness, Weight weight, Make make) {
        this(name, kind, along, across, thickness, weight, make, new Anywhere());
    }

    /** How far a post may stand off the middle of its pad. */
    public sealed interface Centring {}

    /** Nothing is said. */
    public record Anywhere() implements Centring {}

    /**
     * Stated.
     *
     * @param distance greatest distance from the pad's middle to the post's, in any direction (m), not negative
     */
    public record Within(double distance) implements Centring {
        public Within {
            Sense.notNegative(distance, "centring");
        }
    }

    /** What the strength of a pad comes from. */
    public sealed interface Make {
        /** Compressive strength f'c of its concrete (Pa), NaN where it is not stated or not of concrete. */
        default double strength() {
            return Double.NaN;
        }
    }

    /**
     * How it is made is not said.
     *
     * @param strength f'c (Pa), positive, NaN where not stated
     */
    public record Unmade(double strength) implements Make {
        /** Nothing is said. */
        public Unmade() {
            this(Double.NaN);
        }

        public Unmade {
            Sense.positiveOrNaN(strength, "strength");
        }
    }

    /**
     * Plain concrete cast in place.
     *
     * @param strength f'c (Pa), positive, NaN where not stated
     */
    public record Cast(double strength) implements Make {
        public Cast {
            Sense.positiveOrNaN(strength, "strength");
        }
    }

    /**
     * A concrete block out of stock.
     *
     * @param hollow whether it has cells
     * @param strength f'c (Pa), positive, NaN where not stated
     */
    public record Block(boolean hollow, double strength) implements Make {
        public Block {
            Sense.positiveOrNaN(strength, "strength");
        }
    }

    /**
     * Out of stock, with a load that somebody stands for. Never a hollow block.
     *
     * @param load allowable load of a post on it (N), positive
     * @param source who says so
     * @param strength f'c (Pa), positive, NaN where not stated or not of concrete
     */
    public record Rated(double load, String source, double strength) implements Make {
        public Rated {
            Sense.positive(load, "rating");
            Sense.positiveOrNaN(strength, "strength");
        }
    }

    /**
     * A steel plate.
     *
     * @param yield Fy (Pa), positive
     */
    public record Plate(double yield) implements Make {
        public Plate {
            Sense.positive(yield, "yield stress");
        }
    }

    /**
     * Part of a concrete slab on the ground.
     *
     * @param strength f'c (Pa), positive, NaN where not stated
     * @param measured how its thickness was measured, empty where it was not
     * @param stands where the post stands on it
     */
    public record SlabPart(double strength, String measured, Stands stands) implements Make {
        public SlabPart {
            Sense.positiveOrNaN(strength, "strength");
        }
    }

    /** Where on a slab a post stands; a joint or a crack counts as an edge. */
    public enum Stands {
        INTERIOR,
        EDGE,
        CORNER,
        UNSTATED
    }

    /**
     * A timber mat: sleepers side by side without gaps on the ground, all timbers of one kind and laid flat. Bearers side by side
     * across them, under the middle, may bring the load of the post to all of them.
     *
     * @param timber section and timber of one sleeper
     * @param sleepers number, at least 1
     * @param bearers number, 0 where the post stands on the sleepers
     * @param alongX whether the sleepers run in x
     * @param spread steel plate between the post's base plate and the timber, or none
     */
    public record Mat(Member timber, int sleepers, int bearers, boolean alongX, Spread spread) implements Make {
        /** A mat on whose timber the base plate stands. */
        public Mat(Member timber, int sleepers, int bearers, boolean alongX) {
            this(timber, sleepers, bearers, alongX, new NoSpread());
        }

        public Mat {
            if (sleepers < 1 || bearers < 0) {
                throw new IllegalArgumentException("a mat has at least one sleeper");
            }
        }
    }

    /** What lies between a base plate and the timber of a mat. */
    public sealed interface Spread {}

    /** Nothing. */
    public record NoSpread() implements Spread {}

    /**
     * A steel plate in the middle of the mat, the post on its middle. It is no part of the pad's thickness; its weight comes on top.
     *
     * @param along x size (m), positive
     * @param across y size (m), positive
     * @param thickness (m), positive
     * @param yield Fy (Pa), positive
     */
    public record SpreadPlate(double along, double across, double thickness, double yield) implements Spread {
        public SpreadPlate {
            Sense.positive(along, "plate size along");
            Sense.positive(across, "plate size across");
            Sense.positive(thickness, "plate thickness");
            Sense.positive(yield, "yield stress");
        }
    }

    /**
     * A crib of equal square timbers, laid crosswise layer on layer.
     *
     * @param members timbers in a layer, at least 2
     * @param timber width of a timber (m), positive
     * @param bearing allowable compression across the grain, wet if it stands wet (Pa), positive
     * @param source who gives that value
     * @param solid whether the layer on the ground and the layer under the post are solid
     */
    public record Stack(int members, double timber, double bearing, String source, boolean solid) implements Make {
        public Stack {
            if (members < 2) {
                throw new IllegalArgumentException("a crib has at least two timbers in a layer");
            }
            Sense.positive(timber, "timber width");
            Sense.positive(bearing, "bearing");
        }
    }

    /** What a pad is made of. */
    public enum Kind {
        CONCRETE,
        TIMBER,
        STEEL,
        SLAB,
        CRIB
    }

    public Pad {
        Sense.positive(along, "pad size along");
        Sense.positive(across, "pad size across");
        Sense.positive(thickness, "thickness");
    }

    /** How far off the middle the post may stand as far as that is stated (m); 0 where nothing is said, which is no promise. */
    public double statedOffset() {
        return centring instanceof Within within ? within.distance() : 0;
    }

    /** Whether a base plate stands wholly on the pad wherever its post may stand, as far as that is stated. */
    public boolean holds(PostType.Plate plate) {
        return plate.along() / 2 + statedOffset() <= along / 2 + FIT
                && plate.across() / 2 + statedOffset() <= across / 2 + FIT;
    }

    /** Steel, 490 pcf (N/m³): common practice, no source. */
    private static final double STEEL = 490 * 4.4482216152605 / (0.3048 * 0.3048 * 0.3048);

    /** Its own weight (N), with a steel plate on it. */
    public double weightOf(Known known) {
        double plate = make instanceof Mat mat && mat.spread() instanceof SpreadPlate steel
                ? STEEL * steel.along() * steel.across() * steel.thickness()
                : 0;
        return known.unitWeight() * thickness * area() + plate;
    }

    /** Area on the ground (m²). */
    public double area() {
        return along * across;
    }

    /** A pad's own weight. */
    public sealed interface Weight {}

    /**
     * Known from a unit weight.
     *
     * @param unitWeight (N/m³), not negative
     * @param stated whether the plan states it; a named default otherwise
     */
    public record Known(double unitWeight, boolean stated) implements Weight {
        public Known {
            Sense.notNegative(unitWeight, "unit weight");
        }
    }

    /** Not known. */
    public record Unknown() implements Weight {}
}
