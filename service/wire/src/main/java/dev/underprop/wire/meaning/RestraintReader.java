package dev.underprop.wire.meaning;

import dev.underprop.api.model.Restraint;
import dev.underprop.api.model.RestraintSides;
import dev.underprop.wire.fault.Messages;
import org.jspecify.annotations.Nullable;

/** Reads what holds something sideways. After a fault was reported, nothing is declared. */
final class RestraintReader {

    private RestraintReader() {}

    static dev.underprop.engine.plan.Restraint.Sides sides(@Nullable RestraintSides sides, Spot at) {
        return sides == null
                ? dev.underprop.engine.plan.Restraint.Sides.UNDECLARED
                : new dev.underprop.engine.plan.Restraint.Sides(
                        read(sides.getAlong(), at.member("along")), read(sides.getAcross(), at.member("across")));
    }

    static dev.underprop.engine.plan.Restraint read(@Nullable Restraint restraint, Spot at) {
        if (restraint == null) {
            return new dev.underprop.engine.plan.Restraint.Undeclared();
        }
        Text by = at.text("by", restraint.getBy());
        Text capacity = at.text("capacity", restraint.getCapacity());
        double force = capacity.quantityOr(Range.CAPACITY, Double.NaN);
        boolean free = Boolean.TRUE.equals(restraint.getFree());
        if (free && (by.given() || capacity.given())) {
            at.report(Messages.RESTRAINT_TWO_WAYS, "");
        } else if (free) {
            return new dev.underprop.engine.plan.Restraint.Free();
        } else if (!by.given()) {
            at.report(Messages.RESTRAINT_UNSTATED, "");
        } else if (by.said()) {
            return new dev.underprop.engine.plan.Restraint.Held(by.value(), force);
        }
        return new dev.underprop.engine.plan.Restraint.Undeclared();
    }
}
