package dev.underprop.engine.plan;

/**
 * Lag screws through a plate into the side grain of timber, in lead holes, square to the face.
 *
 * @param count how many, at least 1
 * @param diameter nominal (m), positive
 * @param penetration of shank and thread into the timber, without the tapered tip (m), positive
 * @param edge from the nearest screw to the edge of the ply it stands in (m), positive
 * @param end from the nearest screw to the end of the timber (m), positive
 * @param spacing least distance between two screws (m), positive, NaN for a single one
 */
public record LagScrews(int count, double diameter, double penetration, double edge, double end, double spacing)
        implements Post.Screws {

    public LagScrews {
        if (count < 1) {
            throw new IllegalArgumentException("there must be at least one lag screw");
        }
        Sense.positive(diameter, "diameter");
        Sense.positive(penetration, "penetration");
        Sense.positive(edge, "edge distance");
        Sense.positive(end, "end distance");
        if (count > 1) {
            Sense.positive(spacing, "spacing");
        }
    }
}
