package dev.underprop.engine.clause.aisc_dg1_2006;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class Section3_1Test {

    @Test
    void aRoundPostHoldsLessThanASquareOne() {
        assertThat(Section3_1.besideRound(0.2, 0.05).value()).isCloseTo(0.08, within(1e-12));
        assertThat(Section3_1.besideSquare(0.2, 0.1).value()).isCloseTo(0.0525, within(1e-12));
    }

    @Test
    void underThePostNothingStandsOut() {
        assertThat(Section3_1.besideRound(0.08, 0.11).value()).isZero();
    }

    @Test
    void refusesWhatIsNoSize() {
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_1.besideRound(0.2, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> Section3_1.besideSquare(0, 0.1));
    }
}
