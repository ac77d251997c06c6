package dev.underprop.wire.meaning;

import dev.underprop.engine.plan.Fastening;
import dev.underprop.wire.fault.Messages;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads how a bearing or a pier gives, and what holds down on it. */
final class SupportReader {

    private SupportReader() {}

    /** Infinite where rigid, NaN after a fault of the quantity. */
    static double stiffness(Optional<String> kind, Text stiffness) {
        double value = stiffness.quantityOr(Range.STIFFNESS, Double.POSITIVE_INFINITY);
        if (kind.isPresent() && kind.get().equals("rigid") && stiffness.given()) {
            stiffness.spot().report(Messages.STIFFNESS_WITH_RIGID, stiffness.value());
        }
        if (kind.isPresent() && kind.get().equals("spring") && !stiffness.given()) {
            stiffness.spot().report(Messages.STIFFNESS_MISSING, "");
        }
        return value;
    }

    static Fastening fastening(dev.underprop.api.model.@Nullable Fastening fastened, Spot at) {
        if (fastened == null) {
            return new Fastening.Loose();
        }
        at.text("by", fastened.getBy()).said();
        Text uplift = at.text("uplift", fastened.getUplift());
        double value = uplift.quantityOr(Range.CAPACITY, Double.NaN);
        return Double.isNaN(value)
                ? new Fastening.Undescribed(fastened.getBy())
                : new Fastening.Held(value, fastened.getBy());
    }
}
