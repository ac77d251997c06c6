package dev.underprop.wire.meaning;

import dev.underprop.engine.plan.LagScrews;
import dev.underprop.wire.fault.Messages;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/** Reads lag screws at an end of a post. After a fault was reported, none are described. */
final class LagScrewsReader {

    private LagScrewsReader() {}

    static Optional<LagScrews> read(dev.underprop.api.model.@Nullable LagScrews screws, Spot at) {
        if (screws == null) {
            return Optional.empty();
        }
        double diameter = at.text("diameter", screws.getDiameter()).quantity(Range.SCREW);
        double penetration = at.text("penetration", screws.getPenetration()).quantity(Range.SCREW);
        double edge = at.text("edge", screws.getEdge()).quantity(Range.SCREW);
        double end = at.text("end", screws.getEnd()).quantity(Range.SCREW);
        Text spacing = at.text("spacing", screws.getSpacing());
        double apart = spacing.quantityOr(Range.SCREW, Double.NaN);
        boolean several = screws.getCount() > 1;
        if (several && !spacing.given()) {
            spacing.spot().report(Messages.MEMBER_MISSING, "", spacing.name());
        }
        boolean known = DoubleStream.of(diameter, penetration, edge, end).noneMatch(Double::isNaN);
        return known && (!several || !Double.isNaN(apart))
                ? Optional.of(new LagScrews(screws.getCount(), diameter, penetration, edge, end, apart))
                : Optional.empty();
    }
}
