package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.INCH;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class Section3_10Test {

    @Test
    void formula() {
        assertThat(Section3_10.areaFactor(1.5 * INCH, 3 * INCH).value()).isCloseTo(1.25, within(1e-12));
        assertThat(Section3_10.areaFactor(5.99 * INCH, 3 * INCH).value()).isCloseTo(6.365 / 5.99, within(1e-12));
    }

    @Test
    void nearerThanThreeInchesToTheEndThereIsNoRise() {
        assertThat(Section3_10.areaFactor(1.5 * INCH, 2.9999 * INCH).value()).isEqualTo(1);
        assertThat(Section3_10.areaFactor(1.5 * INCH, 0).value()).isEqualTo(1);
        assertThat(Section3_10.areaFactor(1.5 * INCH, -1 * INCH).value()).isEqualTo(1);
    }

    @Test
    void stressIsForceOverArea() {
        assertThat(Section3_10.bearingStress(1000, 0.1, 0.05).value()).isCloseTo(200_000, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -1, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoSize(double bad) {
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_10.areaFactor(bad, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_10.bearingStress(1, bad, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_10.bearingStress(1, 1, bad));
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_10.areaFactor(1, Double.NaN));
    }
}
