package dev.underprop.wire.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class KindTest {
    @ParameterizedTest
    @CsvSource({
        "POSITION,         3.048,               10,  ft,    3.048,          m",
        "SIZE,             0.0889,              3.5, in,    88.9,           mm",
        "DEFLECTION,       -0.003175,           -0.125, in, -3.175,         mm",
        "FORCE,            4448.2216152605,     1000, lb,   4.44822162,     kN",
        "LINE_LOAD,        14593.9029372064,    1000, plf,  14.5939029,     kN/m",
        "MOMENT,           1355.8179483314004,  1000, lb-ft, 1.35581795,    kN-m",
        "PRESSURE,         1915.2103592343,     40,  psf,   1.91521036,     kPa",
        "STRESS,           17236893.2329209,    2500, psi,  17.2368932,     MPa",
        "AREA,             0.09290304,          1,   ft2,   0.09290304,     m2",
        "SECTION_AREA,     0.00064516,          1,   in2,   645.16,         mm2",
        "SECTION_MODULUS,  0.000016387064,      1,   in3,   16387.064,      mm3",
        "SECOND_MOMENT,    4.162314256e-7,      1,   in4,   416231.426,     mm4",
        "STIFFNESS,        175126.835246476,    1000, lb/in, 175.126835,    kN/m",
        "UNIT_WEIGHT,      18850.49566154954, 120, pcf, 18.8504957, kN/m3",
        "SUBGRADE_MODULUS, 27144713.7527,       100, pci,   27144.7138,     kN/m3",
        "ANGLE,            0.026179938779914943, 1.5, deg,  1.5,            deg",
        "DURATION,         86400,               24,  h,     24,             h"
    })
    void printsOneUnitInEachSystem(Kind kind, double value, String us, String usUnit, String si, String siUnit) {
        assertThat(ValueWriter.nine(kind.value(value, UnitSystem.US))).isEqualTo(us);
        assertThat(kind.unit(UnitSystem.US)).isEqualTo(usUnit);
        assertThat(ValueWriter.nine(kind.value(value, UnitSystem.SI))).isEqualTo(si);
        assertThat(kind.unit(UnitSystem.SI)).isEqualTo(siUnit);
    }

    static List<Arguments> inPlans() {
        List<Arguments> cases = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            for (UnitSystem system : UnitSystem.values()) {
                cases.add(Arguments.of(kind, system));
            }
        }
        cases.removeIf(one -> !((Kind) one.get()[0]).inPlans());
        return cases;
    }

    @ParameterizedTest
    @MethodSource("inPlans")
    void planTextIsReadBack(Kind kind, UnitSystem system) {
        double value = -1234.56789012;
        QuantityReading reading = Quantity.parse(kind.planText(value, system), dimension(kind));
        assertThat(reading)
                .isInstanceOfSatisfying(
                        QuantityReading.Value.class,
                        read -> assertThat(read.si()).isCloseTo(value, within(1e-5)));
    }

    private static Dimension dimension(Kind kind) {
        return switch (kind) {
            case POSITION, SIZE, DEFLECTION -> Dimension.LENGTH;
            case PRESSURE, STRESS -> Dimension.PRESSURE;
            default -> Dimension.valueOf(kind.name());
        };
    }

    @ParameterizedTest
    @CsvSource({
        "SIZE, 0.0889, US, 3.5 in",
        "SIZE, 0.0889, SI, 88.9 mm",
        "POSITION, -0.1524, US, -0.5 ft",
        "FORCE, 0, US, 0 lb"
    })
    void planTextIsAsPlansWriteIt(Kind kind, double value, UnitSystem system, String text) {
        assertThat(kind.planText(value, system)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"MOMENT", "AREA", "SECTION_AREA", "SECTION_MODULUS", "SECOND_MOMENT"})
    void whatNoPlanHoldsHasNoPlanText(Kind kind) {
        assertThatThrownBy(() -> kind.planText(1, UnitSystem.US)).isInstanceOf(IllegalStateException.class);
    }
}
