package dev.underprop.wire.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.GIGA;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MILLI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tech.units.indriya.unit.Units.DAY;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.METRE_PER_SQUARE_SECOND;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import systems.uom.common.USCustomary;

/** Every unit against a general-purpose units library, which has its own factors. */
class UnitLibraryTest {
    /** One part in 10^15: four roundings of a double. */
    private static final double RELATIVE = 1e-15;
    /** Standard gravity (m/s2), exact by definition; the library has the pound as a mass. */
    private static final double GRAVITY = 9.80665;

    private static final Unit<?> POUND =
            USCustomary.POUND.multiply(METRE_PER_SQUARE_SECOND).multiply(GRAVITY);
    private static final Unit<?> KIP = POUND.multiply(1000);
    private static final Unit<?> FOOT = USCustomary.FOOT;
    private static final Unit<?> INCH = USCustomary.INCH;

    private static Map<String, Unit<?>> library() {
        Map<String, Unit<?>> units = new TreeMap<>();
        units.put("ft", FOOT);
        units.put("'", FOOT);
        units.put("in", INCH);
        units.put("\"", INCH);
        units.put("m", METRE);
        units.put("cm", CENTI(METRE));
        units.put("mm", MILLI(METRE));
        units.put("lb", POUND);
        units.put("lbf", POUND);
        units.put("kip", KIP);
        units.put("N", NEWTON);
        units.put("kN", KILO(NEWTON));
        units.put("MN", MEGA(NEWTON));
        units.put("plf", POUND.divide(FOOT));
        units.put("lb/ft", POUND.divide(FOOT));
        units.put("lbf/ft", POUND.divide(FOOT));
        units.put("klf", KIP.divide(FOOT));
        units.put("kip/ft", KIP.divide(FOOT));
        units.put("N/m", NEWTON.divide(METRE));
        units.put("kN/m", KILO(NEWTON).divide(METRE));
        units.put("N/mm", NEWTON.divide(MILLI(METRE)));
        units.put("kN/mm", KILO(NEWTON).divide(MILLI(METRE)));
        units.put("MN/m", MEGA(NEWTON).divide(METRE));
        units.put("lb/in", POUND.divide(INCH));
        units.put("lbf/in", POUND.divide(INCH));
        units.put("kip/in", KIP.divide(INCH));
        units.put("psf", POUND.divide(FOOT.pow(2)));
        units.put("ksf", KIP.divide(FOOT.pow(2)));
        units.put("psi", POUND.divide(INCH.pow(2)));
        units.put("ksi", KIP.divide(INCH.pow(2)));
        units.put("Pa", PASCAL);
        units.put("kPa", KILO(PASCAL));
        units.put("MPa", MEGA(PASCAL));
        units.put("GPa", GIGA(PASCAL));
        units.put("kN/m2", KILO(NEWTON).divide(METRE.pow(2)));
        units.put("N/mm2", NEWTON.divide(MILLI(METRE).pow(2)));
        units.put("pcf", POUND.divide(FOOT.pow(3)));
        units.put("pci", POUND.divide(INCH.pow(3)));
        units.put("kN/m3", KILO(NEWTON).divide(METRE.pow(3)));
        units.put("MN/m3", MEGA(NEWTON).divide(METRE.pow(3)));
        units.put("deg", USCustomary.DEGREE_ANGLE);
        units.put("rad", RADIAN);
        units.put("s", SECOND);
        units.put("min", MINUTE);
        units.put("h", HOUR);
        units.put("d", DAY);
        return units;
    }

    private static Unit<?> si(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> METRE;
            case FORCE -> NEWTON;
            case LINE_LOAD, STIFFNESS -> NEWTON.divide(METRE);
            case PRESSURE -> PASCAL;
            case UNIT_WEIGHT, SUBGRADE_MODULUS -> NEWTON.divide(METRE.pow(3));
            case ANGLE -> RADIAN;
            case DURATION -> SECOND;
        };
    }

    @TestFactory
    Stream<DynamicTest> agreesWithTheLibrary() {
        return Arrays.stream(Dimension.values())
                .flatMap(dimension -> Quantity.units(dimension).stream()
                        .map(unit -> DynamicTest.dynamicTest(dimension + " in " + unit, () -> agree(dimension, unit))));
    }

    private static void agree(Dimension dimension, String unit) throws IncommensurableException {
        assertThat(library()).containsKey(unit);
        Unit<?> known = library().getOrDefault(unit, METRE);
        double expected = known.getConverterToAny(si(dimension)).convert(7.25);
        QuantityReading reading = Quantity.parse("7.25 " + unit, dimension);
        assertThat(reading)
                .isInstanceOfSatisfying(
                        QuantityReading.Value.class,
                        value -> assertThat(value.si()).isCloseTo(expected, within(expected * RELATIVE)));
    }
}
