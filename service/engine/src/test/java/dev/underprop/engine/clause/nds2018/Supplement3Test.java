package dev.underprop.engine.clause.nds2018;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.standard.Citation.Standing;
import dev.underprop.engine.standard.Cited;
import org.junit.jupiter.api.Test;

/** The formula is from memory; figures by pocket calculator. */
class Supplement3Test {
    private static final double PCF = 4.4482216152605 / (0.3048 * 0.3048 * 0.3048);

    /** 62.4 · 0.5/1.0855 · 1.19 = 34.203 pcf. */
    @Test
    void atNineteenPerCent() {
        Cited weight = Supplement3.weight(0.5, 19);

        assertThat(weight.value() / PCF).isCloseTo(34.203, within(0.001));
        assertThat(weight.citation().standing()).isEqualTo(Standing.FROM_MEMORY);
    }

    @Test
    void ovenDryWoodWeighsItsSpecificGravity() {
        assertThat(Supplement3.weight(0.42, 0).value() / PCF).isCloseTo(62.4 * 0.42, within(1e-9));
    }

    @Test
    void refusesWhatIsNoNumber() {
        assertThatIllegalArgumentException().isThrownBy(() -> Supplement3.weight(Double.NaN, 19));
        assertThatIllegalArgumentException().isThrownBy(() -> Supplement3.weight(-0.5, 19));
        assertThatIllegalArgumentException().isThrownBy(() -> Supplement3.weight(0.5, -1));
    }
}
