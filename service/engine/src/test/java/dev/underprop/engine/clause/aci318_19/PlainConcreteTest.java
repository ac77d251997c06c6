package dev.underprop.engine.clause.aci318_19;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.standard.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plain concrete, worked by hand; the root of 2500 psi is 50 psi. */
class PlainConcreteTest {

    private static final double INCH = 0.0254;
    private static final double POUND = 4.4482216152605;
    private static final double PSI = POUND / (INCH * INCH);
    private static final double PCF = POUND / (0.3048 * 0.3048 * 0.3048);

    private static double value(Outcome outcome) {
        return ((Outcome.Value) outcome).cited().value();
    }

    private static String reason(Outcome outcome) {
        return ((Outcome.Refused) outcome).reason();
    }

    /** Half way between the edge of the column and that of the plate. */
    @Test
    void underASteelPlateTheLoadStandsHalfWayOut() {
        assertThat(Section13_2.underPlate(0.2, 0.05).value()).isCloseTo(0.125, within(1e-15));
    }

    @Test
    void aPadIsEightInchesThickAndLosesTwo() {
        assertThat(value(Section14_3.footing(8 * INCH))).isCloseTo(6 * INCH, within(1e-12));
        assertThat(reason(Section14_3.footing(7.5 * INCH))).contains("of 7.5 in is thinner");
        assertThat(value(Section14_3.onSoil(3 * INCH))).isCloseTo(INCH, within(1e-12));
        assertThat(reason(Section14_3.onSoil(1.5 * INCH))).contains("1.5 in");
        assertThat(reason(Section14_3.onSoil(2 * INCH))).contains("2.0 in");
    }

    /** 0.60·4/3·0.75·50 psi over 20 in by 10 in is 6000 lbf. */
    @Test
    void oneWayShear() {
        assertThat(Section14_5.oneWay(2500 * PSI, 0.75, 20 * INCH, 10 * INCH).value() / POUND)
                .isCloseTo(6000, within(1e-9));
    }

    /** 0.60·0.75·50 psi over 40 in by 10 in is 9000 lbf, times (1 + 2/beta)·4/3 with 2.66 at most. */
    @ParameterizedTest
    @CsvSource({"1, 2.66", "2, 2.66", "4, 2", "8, 1.6666666666666667"})
    void twoWayShear(double beta, double factor) {
        assertThat(Section14_5.twoWay(2500 * PSI, 0.75, beta, 40 * INCH, 10 * INCH)
                                .value()
                        / POUND)
                .isCloseTo(9000 * factor, within(1e-9));
    }

    @Test
    void aLoadedAreaIsAtLeastAsLongAsItIsBroad() {
        assertThatIllegalArgumentException().isThrownBy(() -> Section14_5.twoWay(2500 * PSI, 1, 0.99, 1, 1));
    }

    @Test
    void strengthHasTwoEnds() {
        assertThat(value(Section19_2.strength(2500 * PSI))).isCloseTo(2500 * PSI, within(1e-6));
        assertThat(value(Section19_2.strength(10_000 * PSI))).isCloseTo(10_000 * PSI, within(1e-6));
        assertThat(reason(Section19_2.strength(2499 * PSI))).contains("of 2499 psi is below");
        assertThat(reason(Section19_2.strength(10_001 * PSI))).contains("of 10001 psi is beyond");
    }

    /** 57000·50 psi. */
    @Test
    void modulus() {
        assertThat(Section19_2.modulus(2500 * PSI).value() / PSI).isCloseTo(2.85e6, within(1e-3));
    }

    /** 0.0075 of the unit weight between 100 and 135 pcf, 0.75 below, and 1 where that gives more. */
    @ParameterizedTest
    @CsvSource({"80, 0.75", "99, 0.75", "110, 0.825", "120, 0.9", "134, 1", "145, 1"})
    void lightConcrete(double pcf, double factor) {
        assertThat(Section19_2.lightweight(pcf * PCF).value()).isCloseTo(factor, within(1e-12));
    }
}
