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
 */
public record Pad(String name, Kind kind, double along, double across, double thickness, Weight weight, Make make)
        implements Post.Footing {

    /** A pad of whose make nothing is said. */
    public Pad(String name, Kind kind, double along, double across, double thickness, Weight weight) {
        this(name, kind, along, across, thickness, weight, new Unmade());
    }

    /** What the strength of a pad comes from. */
    public sealed interface Make {}

    /** Nothing is said. */
    public record Unmade() implements Make {}

    /**
     * Plain concrete.
     *
     * @param strength f'c (Pa), positive
     */
    public record Cast(double strength) implements Make {
        public Cast {
            Sense.positive(strength, "strength");
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
