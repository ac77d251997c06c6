package dev.underprop.wire.meaning;

import dev.underprop.api.model.Plate;
import dev.underprop.engine.plan.PostType;
import dev.underprop.wire.fault.Messages;
import java.util.function.Supplier;

/** Reads a plate at an end of a post. The supplier is to be asked only when the plan has no fault. */
final class PlateReader {

    private PlateReader() {}

    static Supplier<PostType.Plate> read(Plate plate, Spot at) {
        double along = at.text("along", plate.getAlong()).quantity(Range.THICKNESS);
        double across = at.text("across", plate.getAcross()).quantity(Range.THICKNESS);
        double thickness = at.text("thickness", plate.getThickness()).quantityOr(Range.PLATE, Double.NaN);
        double yield = at.text("yieldStress", plate.getYieldStress()).quantityOr(Range.YIELD, Double.NaN);
        Text round = at.text("round", plate.getRound());
        Text square = at.text("square", plate.getSquare());
        double diameter = round.quantityOr(Range.THICKNESS, Double.NaN);
        double side = square.quantityOr(Range.THICKNESS, Double.NaN);
        if (round.given() && square.given()) {
            square.spot().report(Messages.SHANK_TWO_WAYS, "");
        }
        return () -> new PostType.Plate(along, across, thickness, yield, shank(round, diameter, square, side));
    }

    private static PostType.Shank shank(Text round, double diameter, Text square, double side) {
        if (round.given()) {
            return new PostType.Round(diameter);
        }
        return square.given() ? new PostType.Square(side) : new PostType.NoShank();
    }
}
