package dev.underprop.wire.answer;

import dev.underprop.api.model.Extreme;
import dev.underprop.api.model.Quantity;
import dev.underprop.wire.quantity.Kind;
import dev.underprop.wire.quantity.UnitSystem;
import dev.underprop.wire.quantity.ValueWriter;
import dev.underprop.wire.quantity.WorkingUnit;
import org.jspecify.annotations.Nullable;

/** Numbers of an answer in its system of units. */
final class Figures {

    private final UnitSystem system;

    Figures(UnitSystem system) {
        this.system = system;
    }

    /** A result. Minus zero is zero. */
    Quantity quantity(Kind kind, double si) {
        return new Quantity().value(number(kind, si)).unit(kind.unit(system));
    }

    /** A line of a calculation record. */
    Quantity quantity(WorkingUnit unit, boolean site, double si) {
        return new Quantity().value(unit.value(si, system, site) + 0.0).unit(unit.symbol(system, site));
    }

    private double number(Kind kind, double si) {
        return kind.value(si, system) + 0.0;
    }

    /** An extreme value; a place along the member where there is one. */
    Extreme extreme(Kind kind, dev.underprop.engine.assess.Extreme extreme) {
        Extreme model = new Extreme()
                .value(number(kind, extreme.value()))
                .unit(kind.unit(system))
                .combination(orNone(extreme.combination()))
                .pattern(orNone(extreme.pattern()))
                .bound(bound(extreme.bound()));
        return Double.isNaN(extreme.at()) ? model : model.at(quantity(Kind.POSITION, extreme.at()));
    }

    /** How things were taken to be; nothing where it does not matter. */
    static dev.underprop.api.model.@Nullable Bound bound(dev.underprop.engine.check.Bound bound) {
        if (bound.equals(dev.underprop.engine.check.Bound.NONE)) {
            return null;
        }
        dev.underprop.api.model.Bound model = new dev.underprop.api.model.Bound()
                .history(bound.history())
                .posts(bound.posts())
                .fastenings(bound.fastenings());
        return bound.fitUp().isEmpty() ? model : model.fitUp(bound.fitUp());
    }

    private static String orNone(String name) {
        return name.isEmpty() ? "none" : name;
    }

    /** A value for people, four digits and its unit. */
    String words(Kind kind, double si) {
        return ValueWriter.plain(number(kind, si), 4) + ' ' + kind.unit(system);
    }

    /** A ratio for people, three digits. A ratio above 1 never reads as 1. */
    static String ratio(double ratio) {
        String shown = ValueWriter.plain(ratio, 3);
        return ratio > 1 && shown.equals("1") ? "just over 1" : shown;
    }
}
