package dev.underprop.engine.clause.aisc360_16;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.standard.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SteelTest {

    private static final double KSI = 1000 * 4.4482216152605 / (0.0254 * 0.0254);

    private static double value(Outcome outcome) {
        return ((Outcome.Value) outcome).cited().value();
    }

    /** 250 MPa, 10 mm: 250e6 x 1e-4 / 4 / 1.67; 1.6 Fy S is more. */
    @Test
    void aStripOfPlateIsAllPlastic() {
        assertThat(SectionF11.plate(250e6, 0.01).value()).isCloseTo(6250 / 1.67, within(1e-9));
    }

    /** 250 MPa, 30 mm: 1.6·250e6·pi·0.03³/32 is below 250e6·0.03³/6. */
    @Test
    void aRoundBarIsNotAllPlastic() {
        assertThat(SectionF11.round(250e6, 0.03).value()).isCloseTo(1060.2875 / 1.67, within(0.001));
    }

    /** 0.60·250e6·1e-4/1.50; 250e6·1e-4/1.67; 0.45·400e6; 1.8·250e6·0.02·0.01/2. */
    @Test
    void shearCompressionAndBearing() {
        assertThat(SectionJ4.shear(250e6, 1e-4).value()).isCloseTo(10_000, within(1e-6));
        assertThat(SectionJ4.compression(250e6, 1e-4).value()).isCloseTo(25_000 / 1.67, within(1e-6));
        assertThat(SectionJ3.shearStress(400e6).value()).isCloseTo(180e6, within(1e-6));
        assertThat(SectionJ7.bearing(250e6, 0.02, 0.01).value()).isCloseTo(45_000, within(1e-6));
    }

    /** Fy/Fe is 2.25 at 4.71 root E/Fy, and both branches give 0.39 Fy there. */
    @Test
    void theBranchesOfBucklingMeet() {
        double meet = Math.PI * Math.sqrt(2.25 * 29_000 / 36);

        assertThat(value(SectionE3.stress(36 * KSI, meet * 0.9999)))
                .isCloseTo(value(SectionE3.stress(36 * KSI, meet * 1.0001)), within(0.002 * 36 * KSI));
        assertThat(value(SectionE3.stress(36 * KSI, meet)) * 1.67 / (36 * KSI)).isCloseTo(0.390, within(0.0005));
    }

    /** Fy/Fe of 2.25 belongs to the first branch, 0.658 to that power; the second would give 0.38978. */
    @Test
    void whereTheBranchesMeetTheFirstRules() {
        double euler = Math.PI * Math.PI * 29e6 * 4.4482216152605 / (0.0254 * 0.0254) / 1e4;
        double yield = 2.25 * euler;
        assertThat(value(SectionE3.stress(yield, 100)) * 1.67 / yield).isCloseTo(0.389951, within(0.000005));
    }

    @Test
    void beyondTwoHundredThereIsNoValue() {
        assertThat(SectionE3.stress(36 * KSI, 200)).isInstanceOf(Outcome.Value.class);
        assertThat(SectionE3.stress(36 * KSI, 200.1)).isInstanceOf(Outcome.Refused.class);
    }

    /** 0.11 x 29000 / 36 is 88.6. */
    @Test
    void aThinWallIsRefused() {
        assertThat(value(SectionE3.wall(0.0885, 0.001, 36 * KSI))).isCloseTo(88.5, within(1e-9));
        assertThat(SectionE3.wall(0.0887, 0.001, 36 * KSI)).isInstanceOf(Outcome.Refused.class);
    }

    /** 60 mm by 4 mm: Z is (0.06³ - 0.052³)/6, 12.5653e-6 m³. Compact up to 0.07 x 29000 / 36, 56.4. */
    @Test
    void aCompactTubeIsAllPlastic() {
        assertThat(value(SectionF8.moment(0.06, 0.004, 235e6))).isCloseTo(235e6 * 12.565333e-6 / 1.67, within(0.001));
        assertThat(SectionF8.moment(0.0563, 0.001, 36 * KSI)).isInstanceOf(Outcome.Value.class);
        assertThat(SectionF8.moment(0.0565, 0.001, 36 * KSI)).isInstanceOf(Outcome.Refused.class);
    }

    /** A wall just as thin as the limit is still thick enough; the limits are written as the clauses write them. */
    @Test
    void aWallAtItsLimitIsAllowed() {
        double modulus = 29e6 * 4.4482216152605 / (0.0254 * 0.0254);
        double yield = 36 * KSI;
        assertThat(SectionE3.wall(0.11 * modulus / yield, 1, yield)).isInstanceOf(Outcome.Value.class);
        assertThat(SectionF8.moment(0.07 * modulus / yield, 1, yield)).isInstanceOf(Outcome.Value.class);
    }

    /** 0.2 belongs to the steeper branch: 0.2 + 8/9·0.45. */
    @Test
    void aFifthIsMuch() {
        assertThat(SectionH1.interaction(0.2, 0.45).value()).isCloseTo(0.6, within(1e-12));
    }

    @Test
    void interactionHasTwoBranches() {
        assertThat(SectionH1.interaction(0.5, 0.45).value()).isCloseTo(0.9, within(1e-12));
        assertThat(SectionH1.interaction(0.1, 0.45).value()).isCloseTo(0.5, within(1e-12));
        assertThat(SectionH1.interaction(0.2, 0.9).value()).isCloseTo(1, within(1e-12));
    }

    @Test
    void theAmplifierGrowsWithoutBoundTowardsItsLimit() {
        assertThat(Appendix8.amplifier(25, 80).value()).isCloseTo(2, within(1e-12));
        assertThat(Appendix8.limit(80).value()).isCloseTo(50, within(1e-12));
        assertThatIllegalArgumentException().isThrownBy(() -> Appendix8.amplifier(50, 80));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -1, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoNumber(double bad) {
        assertThatIllegalArgumentException().isThrownBy(() -> SectionF11.plate(bad, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> SectionF11.plate(1, bad));
        assertThatIllegalArgumentException().isThrownBy(() -> SectionE3.stress(bad, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> SectionE3.stress(1, bad));
        assertThatIllegalArgumentException().isThrownBy(() -> SectionE3.wall(bad, 1, 1));
    }
}
