package dev.underprop.engine.clause.irc2021;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.clause.irc2021.SectionR502_6.Seat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IrcTest {

    /** International Residential Code 2018/2021, Table R301.7, from memory. */
    @Test
    void deflection() {
        assertThat(SectionR301_7.floors().value()).isEqualTo(360);
        assertThat(SectionR301_7.otherMembers().value()).isEqualTo(240);
        assertThat(SectionR301_7.allowed(3.6, SectionR301_7.floors()).value()).isCloseTo(0.01, within(1e-15));
    }

    @Test
    void aCantileverCountsTwiceItsProjection() {
        double length = SectionR301_7.cantileverLength(0.9).value();

        assertThat(length).isEqualTo(1.8);
        assertThat(SectionR301_7.allowed(length, SectionR301_7.floors()).value())
                .isCloseTo(0.005, within(1e-15));
    }

    /** International Residential Code, R502.6: 1 1/2 in on wood or metal, 3 in on masonry or concrete (read). */
    @Test
    void leastBearing() {
        assertThat(SectionR502_6.leastBearing(Seat.WOOD_OR_METAL).value()).isCloseTo(0.0381, within(1e-12));
        assertThat(SectionR502_6.leastBearing(Seat.MASONRY_OR_CONCRETE).value()).isCloseTo(0.0762, within(1e-12));
        assertThat(SectionR502_6.leastBearing(Seat.WOOD_OR_METAL).citation().text())
                .isEqualTo("IRC 2021, R502.6");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -1, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoLength(double bad) {
        assertThatIllegalArgumentException().isThrownBy(() -> SectionR301_7.cantileverLength(bad));
        assertThatIllegalArgumentException().isThrownBy(() -> SectionR301_7.allowed(bad, SectionR301_7.floors()));
    }
}
