package dev.underprop.wire.meaning;

import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.fault.Nearest;
import dev.underprop.wire.quantity.Quantity;
import dev.underprop.wire.quantity.QuantityReading;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One text of the plan, or the place where it is absent.
 *
 * @param spot where it stands or would stand
 * @param name what the member is called
 * @param value what it says, empty when absent
 * @param given whether it is there
 */
record Text(Spot spot, String name, String value, boolean given) {

    /** The quantity in SI; NaN after a fault was reported, also where it is absent. */
    double quantity(Range range) {
        if (!given) {
            spot.report(Messages.MEMBER_MISSING, "", name);
            return Double.NaN;
        }
        QuantityReading reading = Quantity.parse(value, range.dimension());
        if (reading instanceof QuantityReading.Refused refused) {
            spot.report(refused.fault());
            return Double.NaN;
        }
        double si = ((QuantityReading.Value) reading).si();
        Optional<Fault> fault = range.fault(si, value);
        fault.ifPresent(spot::report);
        return fault.isPresent() ? Double.NaN : si;
    }

    /** The quantity in SI, NaN after a fault was reported; what is to be taken where it is absent. */
    double quantityOr(Range range, double absent) {
        return given ? quantity(range) : absent;
    }

    /** One of a few words, case and outer blanks aside; empty after a fault was reported. */
    Optional<String> choice(List<String> choices) {
        String wanted = value.strip().toLowerCase(Locale.ROOT);
        if (choices.contains(wanted)) {
            return Optional.of(wanted);
        }
        String shown = Fault.shown(value);
        String near = Nearest.to(value, choices);
        if (near.isEmpty()) {
            spot.report(Messages.CHOICE_UNKNOWN, value, shown, name, String.join(", ", choices));
        } else {
            spot.report(Messages.CHOICE_UNKNOWN_NEAR, value, shown, name, near);
        }
        return Optional.empty();
    }

    /** Whether it says something; blanks say nothing, and are reported. */
    boolean said() {
        if (given && value.isBlank()) {
            spot.report(Messages.TEXT_EMPTY, value);
        }
        return given && !value.isBlank();
    }

    /** Whether it is the truth {@code true}. */
    boolean yes() {
        return given && value.equals("true");
    }

    /** This text where it is given, else the one that holds for all: what is missing there is told there, once. */
    Text or(Text common) {
        return given ? this : common;
    }
}
