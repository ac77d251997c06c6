package dev.underprop.engine.clause.aci318_19;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.standard.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Section14_5_6Test {

    private static double value(Outcome outcome) {
        return ((Outcome.Value) outcome).cited().value();
    }

    /** 0.60 x 0.85 x 20 MPa x 0.04 m² times the root, which counts 2 at most. */
    @ParameterizedTest
    @CsvSource({"0.04, 408000", "0.09, 612000", "0.16, 816000", "1, 816000"})
    void bearing(double support, double expected) {
        assertThat(value(Section14_5_6.bearing(20e6, 0.04, support))).isCloseTo(expected, within(1e-6));
    }

    /** 2500 psi are 17.2369 MPa. */
    @Test
    void weakConcreteIsRefused() {
        assertThat(Section14_5_6.bearing(17.2369e6, 0.04, 0.04)).isInstanceOf(Outcome.Value.class);
        assertThat(Section14_5_6.bearing(17.2e6, 0.04, 0.04)).isInstanceOf(Outcome.Refused.class);
    }

    /** Along, across, pad along, pad across, thickness, A2: limited by the narrow side, by the slope, by nothing left. */
    @ParameterizedTest
    @CsvSource({
        "0.2, 0.2, 0.5, 0.4, 0.25, 0.16",
        "0.2, 0.2, 0.5, 0.4, 0.025, 0.09",
        "0.2, 0.1, 0.5, 0.5, 0.1, 0.125",
        "0.2, 0.2, 0.2, 0.4, 0.25, 0.04"
    })
    void support(double along, double across, double padAlong, double padAcross, double thickness, double expected) {
        assertThat(Section14_5_6.support(along, across, padAlong, padAcross, thickness)
                        .value())
                .isCloseTo(expected, within(1e-12));
    }

    @Test
    void refusesWhatIsNoArea() {
        assertThatIllegalArgumentException().isThrownBy(() -> Section14_5_6.bearing(20e6, 0.04, 0.03));
        assertThatIllegalArgumentException().isThrownBy(() -> Section14_5_6.bearing(Double.NaN, 0.04, 0.04));
        assertThatIllegalArgumentException().isThrownBy(() -> Section14_5_6.support(0.2, 0.2, 1, 1, 0));
    }
}
