package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.INCH;
import static dev.underprop.engine.clause.nds2018.Samples.PSI;
import static dev.underprop.engine.clause.nds2018.Samples.refusal;
import static dev.underprop.engine.clause.nds2018.Samples.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class Section3_4Test {
    private static final double POUND = 4.4482216152605;

    /** 3V/(2bd) worked by hand: 1500 lb on 3 in x 10 in is 75 psi. */
    @Test
    void shearStress() {
        double stress = Section3_4.shearStress(1500 * POUND, 30 * INCH * INCH).value();

        assertThat(stress / PSI).isCloseTo(75, within(1e-9));
    }

    /** 2x10 notched 2 in at its end, F'v 150 psi: formula of 3.4.3.2(a) from memory, result recomputed, 668.1 lb. */
    @Test
    void notchedShear() {
        double shear = value(Section3_4.notchedShear(150 * PSI, 1.5 * INCH, 9.25 * INCH, 7.25 * INCH))
                .value();

        assertThat(shear / POUND).isCloseTo(668.1, within(0.05));
    }

    @Test
    void withoutNotchItIsThePlainShear() {
        double shear =
                value(Section3_4.notchedShear(PSI, INCH, 9 * INCH, 9 * INCH)).value();

        assertThat(Section3_4.shearStress(shear, 9 * INCH * INCH).value()).isCloseTo(PSI, within(1e-9));
    }

    /** A quarter of 9.25 in is 2.3125 in. */
    @Test
    void notchDeeperThanAQuarterIsRefused() {
        assertThat(value(Section3_4.notchedShear(PSI, INCH, 9.25 * INCH, 9.25 * INCH - 2.3125 * INCH))
                        .value())
                .isPositive();
        assertThat(refusal(Section3_4.notchedShear(PSI, INCH, 9.25 * INCH, 9.25 * INCH - 2.32 * INCH)))
                .contains("quarter");
    }

    /** NDS 2018, 3.4.3.1(a), from memory: x/d nearer than d. */
    @ParameterizedTest
    @CsvSource({"0, 0", "5, 0.5", "10, 1", "30, 1"})
    void concentratedLoadNearTheBearing(double x, double share) {
        assertThat(Section3_4.nearBearing(x, 10).value()).isEqualTo(share);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -1, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoSize(double bad) {
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_4.shearStress(1, bad));
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_4.nearBearing(bad, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_4.notchedShear(1, 1, 1, bad));
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_4.shearStress(bad == -1 ? Double.NaN : bad, 1));
    }

    @Test
    void moreDepthLeftThanThereIsIsAFault() {
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_4.notchedShear(1, 1, 1, 1.1));
    }
}
