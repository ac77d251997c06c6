package dev.underprop.wire.quantity;

import static dev.underprop.wire.quantity.Dimension.ANGLE;
import static dev.underprop.wire.quantity.Dimension.DURATION;
import static dev.underprop.wire.quantity.Dimension.FORCE;
import static dev.underprop.wire.quantity.Dimension.LENGTH;
import static dev.underprop.wire.quantity.Dimension.LINE_LOAD;
import static dev.underprop.wire.quantity.Dimension.PRESSURE;
import static dev.underprop.wire.quantity.Dimension.STIFFNESS;
import static dev.underprop.wire.quantity.Dimension.SUBGRADE_MODULUS;
import static dev.underprop.wire.quantity.Dimension.UNIT_WEIGHT;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A unit that a plan may use, with its exact size in SI as a ratio of whole numbers.
 *
 * <p>The foot is 0.3048 m exactly, the inch 0.0254 m, the pound 0.45359237 kg, standard gravity 9.80665 m/s2, hence the
 * pound-force 4.4482216152605 N exactly (NIST Special Publication 811, 2008 edition, appendix B; from memory). A kip is
 * 1000 lb. All others follow by division.
 *
 * @param symbol the unit as a plan writes it
 * @param top numerator of the size in SI
 * @param bottom denominator of the size in SI
 * @param dimensions what it may measure
 */
record Unit(String symbol, BigDecimal top, BigDecimal bottom, List<Dimension> dimensions) {
    /** A pound-force, in units of 10^-13 N. */
    private static final long LB = 44_482_216_152_605L;
    /** Pi / 4 in units of 10^-17, from 3.14159265358979324; the rounding is far below that of a double. */
    private static final long QUARTER_PI = 78_539_816_339_744_831L;

    private static final Map<String, Unit> ALL = table(
            unit("ft", 3048, 10_000, LENGTH),
            unit("'", 3048, 10_000, LENGTH),
            unit("in", 254, 10_000, LENGTH),
            unit("\"", 254, 10_000, LENGTH),
            unit("m", 1, 1, LENGTH),
            unit("cm", 1, 100, LENGTH),
            unit("mm", 1, 1000, LENGTH),
            unit("lb", LB, 10_000_000_000_000L, FORCE),
            unit("lbf", LB, 10_000_000_000_000L, FORCE),
            unit("kip", LB, 10_000_000_000L, FORCE),
            unit("N", 1, 1, FORCE),
            unit("kN", 1000, 1, FORCE),
            unit("MN", 1_000_000, 1, FORCE),
            unit("plf", LB, 3_048_000_000_000L, LINE_LOAD),
            unit("lb/ft", LB, 3_048_000_000_000L, LINE_LOAD),
            unit("lbf/ft", LB, 3_048_000_000_000L, LINE_LOAD),
            unit("klf", LB, 3_048_000_000L, LINE_LOAD),
            unit("kip/ft", LB, 3_048_000_000L, LINE_LOAD),
            unit("N/m", 1, 1, LINE_LOAD, STIFFNESS),
            unit("kN/m", 1000, 1, LINE_LOAD, STIFFNESS),
            unit("N/mm", 1000, 1, LINE_LOAD, STIFFNESS),
            unit("lb/in", LB, 254_000_000_000L, STIFFNESS),
            unit("lbf/in", LB, 254_000_000_000L, STIFFNESS),
            unit("kip/in", LB, 254_000_000L, STIFFNESS),
            unit("kN/mm", 1_000_000, 1, STIFFNESS),
            unit("MN/m", 1_000_000, 1, STIFFNESS),
            unit("psf", LB, 929_030_400_000L, PRESSURE),
            unit("ksf", LB, 929_030_400L, PRESSURE),
            unit("psi", LB, 6_451_600_000L, PRESSURE),
            unit("ksi", LB, 6_451_600L, PRESSURE),
            unit("Pa", 1, 1, PRESSURE),
            unit("kPa", 1000, 1, PRESSURE),
            unit("MPa", 1_000_000, 1, PRESSURE),
            unit("GPa", 1_000_000_000, 1, PRESSURE),
            unit("kN/m2", 1000, 1, PRESSURE),
            unit("N/mm2", 1_000_000, 1, PRESSURE),
            unit("pcf", LB, 283_168_465_920L, UNIT_WEIGHT),
            unit("kN/m3", 1000, 1, UNIT_WEIGHT, SUBGRADE_MODULUS),
            unit("pci", LB, 163_870_640L, SUBGRADE_MODULUS),
            unit("MN/m3", 1_000_000, 1, SUBGRADE_MODULUS),
            unit("deg", QUARTER_PI, 4_500_000_000_000_000_000L, ANGLE),
            unit("rad", 1, 1, ANGLE),
            unit("s", 1, 1, DURATION),
            unit("min", 60, 1, DURATION),
            unit("h", 3600, 1, DURATION),
            unit("d", 86_400, 1, DURATION));

    static final Unit INCH = named("in");

    private static Unit unit(String symbol, long top, long bottom, Dimension... dimensions) {
        return new Unit(symbol, BigDecimal.valueOf(top), BigDecimal.valueOf(bottom), List.of(dimensions));
    }

    private static Map<String, Unit> table(Unit... units) {
        Map<String, Unit> table = new LinkedHashMap<>();
        for (Unit unit : units) {
            table.put(unit.symbol(), unit);
        }
        return table;
    }

    static boolean known(String symbol) {
        return ALL.containsKey(symbol);
    }

    static Unit named(String symbol) {
        Unit unit = ALL.get(symbol);
        if (unit == null) {
            throw new IllegalArgumentException("No unit is called " + symbol);
        }
        return unit;
    }

    static List<String> symbols() {
        return List.copyOf(ALL.keySet());
    }

    /** The symbols read for a dimension, in the order of the table. */
    static List<String> symbols(Dimension dimension) {
        return ALL.values().stream()
                .filter(unit -> unit.dimensions().contains(dimension))
                .map(Unit::symbol)
                .toList();
    }

    boolean measures(Dimension dimension) {
        return dimensions.contains(dimension);
    }
}
