package dev.underprop.engine.plan;

import dev.underprop.engine.section.RoundTube;
import java.util.List;

/**
 * A type of post.
 *
 * @param name as the plan calls it
 * @param rating allowable load by height, or that none is given
 * @param head plate under the beam
 * @param base plate on the pad
 * @param tube of which it is made, or that none is described
 * @param named class of a standard that it is declared to be of, or that none is named
 * @param shaft of another make than one tube, or that none is described
 * @param eccentricity how far off the middle of the foot the load may act (m), not negative, NaN where not stated
 */
public record PostType(
        String name, Rating rating, Plate head, Plate base, Tube tube, Named named, Shaft shaft, double eccentricity)
        implements Post.Type {

    public PostType {
        if (!Double.isNaN(eccentricity)) {
            Sense.notNegative(eccentricity, "eccentricity");
        }
    }

    /** A type of which it is not stated where on its foot the load acts. */
    public PostType(String name, Rating rating, Plate head, Plate base, Tube tube, Named named, Shaft shaft) {
        this(name, rating, head, base, tube, named, shaft, Double.NaN);
    }

    /** A type of whose tube nothing is said. */
    public PostType(String name, Rating rating, Plate head, Plate base) {
        this(name, rating, head, base, new NoTube());
    }

    /** A type of neither a named class nor another make than its tube. */
    public PostType(String name, Rating rating, Plate head, Plate base, Tube tube) {
        this(name, rating, head, base, tube, new NoClass(), new NoShaft());
    }

    /** A class of a standard. */
    public sealed interface Named permits NoClass, PropClass {}

    /** None named. */
    public record NoClass() implements Named {}

    /** What a post is made of, other than one tube. */
    public sealed interface Shaft permits NoShaft, TimberPost, Telescope {}

    /** Not described. */
    public record NoShaft() implements Shaft {}

    /** The tube of a post. */
    public sealed interface Tube {}

    /** Not described. */
    public record NoTube() implements Tube {}

    /**
     * One round tube from plate to plate.
     *
     * @param section of the tube
     * @param yield yield stress Fy (Pa), positive
     * @param eccentricity of the load at both ends, to the same side (m), not negative
     * @param plain whether the plan states that the post has neither screw, joint nor pin
     */
    public record Pipe(RoundTube section, double yield, double eccentricity, boolean plain) implements Tube {
        /** Eccentricity where none is stated, 25 mm: BS 5975 practice for props, from memory (m). */
        public static final double ECCENTRICITY = 0.025;

        public Pipe {
            Sense.positive(yield, "yield stress");
            Sense.notNegative(eccentricity, "eccentricity");
        }
    }

    /**
     * A plate.
     *
     * @param along x size (m), positive
     * @param across y size (m), positive
     * @param thickness (m), positive, NaN where not stated
     * @param yield yield stress Fy (Pa), positive, NaN where not stated
     * @param shank what of the post meets its middle
     */
    public record Plate(double along, double across, double thickness, double yield, Shank shank) {

        /** A plate of which no more than its size is stated. */
        public Plate(double along, double across) {
            this(along, across, Double.NaN, Double.NaN, new NoShank());
        }

        public Plate {
            Sense.positive(along, "plate size along");
            Sense.positive(across, "plate size across");
            if (!Double.isNaN(thickness)) {
                Sense.positive(thickness, "plate thickness");
            }
            if (!Double.isNaN(yield)) {
                Sense.positive(yield, "yield stress");
            }
        }
    }

    /** The end of the tube or screw that meets a plate. */
    public sealed interface Shank {}

    /** Not stated. */
    public record NoShank() implements Shank {}

    /**
     * Round.
     *
     * @param diameter outside (m), positive
     */
    public record Round(double diameter) implements Shank {
        public Round {
            Sense.positive(diameter, "outside diameter");
        }
    }

    /**
     * Square, its sides along x and y.
     *
     * @param side outside (m), positive
     */
    public record Square(double side) implements Shank {
        public Square {
            Sense.positive(side, "outside size");
        }
    }

    /** What is known of the post's strength by table. */
    public sealed interface Rating {}

    /** No rating given. */
    public record NotRated() implements Rating {}

    /**
     * A rating table.
     *
     * @param source where it comes from
     * @param factor characteristic values are divided by it; 1 for allowable values
     * @param interpolate whether linear interpolation between rows is asked for
     * @param rows in ascending order of height, at least one
     */
    public record Table(String source, double factor, boolean interpolate, List<Row> rows) implements Rating {
        public Table {
            if (!(factor >= 1)) {
                throw new IllegalArgumentException("the factor must be at least 1");
            }
            rows = List.copyOf(rows);
            for (int i = 0; i < rows.size(); i++) {
                if (i > 0 && !(rows.get(i).height() > rows.get(i - 1).height())) {
                    throw new IllegalArgumentException("rows must rise in height");
                }
            }
            if (rows.isEmpty()) {
                throw new IllegalArgumentException("a table needs a row");
            }
        }
    }

    /**
     * One row.
     *
     * @param height (m), positive
     * @param load at that height (N), positive
     */
    public record Row(double height, double load) {
        public Row {
            Sense.positive(height, "height");
            Sense.positive(load, "load");
        }
    }
}
