package dev.underprop.wire.meaning;

import dev.underprop.api.model.WeakerLayer;
import dev.underprop.engine.plan.Ground;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Reads a weaker layer below the pads. */
final class WeakerReader {

    private WeakerReader() {}

    /** What lays it under other ground; asked for only when the plan has no fault. */
    static UnaryOperator<Ground> read(@Nullable WeakerLayer given, Spot at) {
        if (given == null) {
            return top -> top;
        }
        double depth = at.text("depth", given.getDepth()).quantity(Range.CUT_DEPTH);
        double pressure = at.text("allowable", given.getAllowable()).quantity(Range.SOIL_PRESSURE);
        Text source = at.text("source", given.getSource());
        source.said();
        return top -> new Ground.Layered(top, depth, pressure, source.value());
    }
}
