package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.INCH;
import static dev.underprop.engine.clause.nds2018.Samples.PSI;
import static dev.underprop.engine.clause.nds2018.Samples.refusal;
import static dev.underprop.engine.clause.nds2018.Samples.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.standard.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class Section3_3Test {

    /** A single 2x12 over 24 ft, uniform load: NDS 2018, 3.3.3.7; numbers of a published solution, recomputed. */
    @Test
    void slenderBeamIsRefusedNotClamped() {
        double le = Section3_3.effectiveLength(BeamLoading.UNIFORM, 24 * 12 * INCH, 11.25 * INCH)
                .value();

        assertThat(le / INCH).isCloseTo(503.19, within(0.005));
        assertThat(refusal(Section3_3.slenderness(le, 1.5 * INCH, 11.25 * INCH)))
                .isEqualTo("slenderness ratio RB = 50.2 is above 50");
        assertThat(refusal(Section3_3.stability(le, 1.5 * INCH, 11.25 * INCH, 580e3 * PSI, 900 * PSI)))
                .contains("above 50");
    }

    @Test
    void slendernessOnTheLimitIsAllowed() {
        double le = 2500 * 1.5 * 1.5 / 11.25;

        assertThat(value(Section3_3.slenderness(le * INCH, 1.5 * INCH, 11.25 * INCH))
                        .value())
                .isCloseTo(50, within(1e-9));
    }

    /** The printed form of 3.3.3.8 (read): (1+f)/1.9 - sqrt(((1+f)/1.9)² - f/0.95). */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.3, 1, 1.37, 4, 50})
    void stabilityIsThePrintedFormula(double f) {
        double half = (1 + f) / 1.9;
        double printed = half - Math.sqrt(half * half - f / 0.95);

        assertThat(Section3_3.stability(f * PSI, PSI).value()).isCloseTo(printed, within(1e-12));
    }

    @Test
    void stabilityNearsOneForAStockyBeamAndVanishesForASlenderOne() {
        assertThat(Section3_3.stability(1e9 * PSI, PSI).value())
                .isCloseTo(1, within(1e-9))
                .isLessThanOrEqualTo(1);
        assertThat(Section3_3.stability(1e-9 * PSI, PSI).value()).isCloseTo(1e-9, within(1e-17));
    }

    @Test
    void heldBeamsNeedNoComputation() {
        assertThat(value(Section3_3.stabilityWhenHeld(0.1, 0.1, false, false)).value())
                .isEqualTo(1);
        assertThat(value(Section3_3.stabilityWhenHeld(0.1, 0.3, true, true)).value())
                .isEqualTo(1);
        assertThat(Section3_3.stabilityWhenHeld(0.1, 0.3, true, false)).isInstanceOf(Outcome.Refused.class);
        assertThat(Section3_3.stabilityWhenHeld(0.1, 0.3, false, true)).isInstanceOf(Outcome.Refused.class);
    }

    @Test
    void bendingStressKeepsTheSignOfTheMoment() {
        assertThat(Section3_3.bendingStress(-300, 1e-4).value()).isCloseTo(-3e6, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -1, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoSize(double bad) {
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_3.bendingStress(1, bad));
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_3.effectiveLength(BeamLoading.UNIFORM, bad, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_3.slenderness(bad, 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_3.stability(bad, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_3.criticalStress(1, bad));
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_3.stabilityWhenHeld(bad, 1, true, true));
    }

    /** 3.3.3.1 and 3.3.3.4, from memory: d/b of 1 needs nothing, above it the member is held where it bears. */
    @Test
    void aMemberDeeperThanBroadIsHeldWhereItBears() {
        assertThat(value(Section3_3.uprightAtBearings(0.2, 0.2, false)).value()).isEqualTo(1);
        assertThat(value(Section3_3.uprightAtBearings(0.1, 0.2, true)).value()).isEqualTo(1);
        assertThat(refusal(Section3_3.uprightAtBearings(0.1, 0.101, false))).contains("1.01 times");
    }
}
