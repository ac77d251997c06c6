package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.DF_1;
import static dev.underprop.engine.clause.nds2018.Samples.INCH;
import static dev.underprop.engine.clause.nds2018.Samples.PSI;
import static dev.underprop.engine.clause.nds2018.Samples.adjusted;
import static dev.underprop.engine.clause.nds2018.Samples.factor;
import static dev.underprop.engine.clause.nds2018.Samples.one;
import static dev.underprop.engine.clause.nds2018.Samples.refusal;
import static dev.underprop.engine.clause.nds2018.Samples.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.material.Treatment;
import dev.underprop.engine.standard.Cited;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class Section4_3Test {

    @Test
    void valuesBearTheirSymbols() {
        assertThat(DesignValue.values())
                .extracting(DesignValue::symbol)
                .contains("Fb", "Ft", "Fv", "Fc", "E")
                .allMatch(symbol -> !symbol.isBlank());
    }

    private static final Cited SNOW = Section2_3.loadDuration(LoadDuration.TWO_MONTHS);

    @ParameterizedTest
    @EnumSource(names = {"BEARING", "MODULUS", "MODULUS_MIN"})
    void loadDurationDoesNotBelongToBearingAndModulus(DesignValue value) {
        Cited[] factors = value.factors().stream().map(Samples::one).toArray(Cited[]::new);
        Cited[] withDuration = java.util.Arrays.copyOf(factors, factors.length + 1);
        withDuration[factors.length] = SNOW;

        assertThat(adjusted(value, DF_1, factors).value()).isEqualTo(value.of(DF_1));
        assertThatIllegalArgumentException().isThrownBy(() -> adjusted(value, DF_1, withDuration));
    }

    @Test
    void aFactorLeftOutIsAFault() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> adjusted(DesignValue.SHEAR, DF_1, SNOW, one("CM"), one("Ct")))
                .withMessageContaining("Ci");
    }

    @Test
    void aFactorGivenTwiceIsAFault() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> adjusted(DesignValue.SHEAR, DF_1, SNOW, SNOW, one("CM"), one("Ct"), one("Ci")));
    }

    @Test
    void aFactorThatIsNotPositiveIsAFault() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> adjusted(DesignValue.SHEAR, DF_1, factor("CD", -1), one("CM"), one("Ct"), one("Ci")));
    }

    @Test
    void theAdjustedValueIsTheProduct() {
        Cited value = adjusted(
                DesignValue.COMPRESSION,
                DF_1,
                factor("CP", 0.7),
                SNOW,
                factor("CM", 0.8),
                factor("Ct", 0.9),
                factor("CF", 1.05),
                factor("Ci", 0.8));

        assertThat(value.value() / PSI).isCloseTo(1500 * 0.7 * 1.15 * 0.8 * 0.9 * 1.05 * 0.8, within(1e-9));
        assertThat(value.symbol()).isEqualTo("F'c");
    }

    /** NDS 2018, Table 4.3.8, from memory. */
    @ParameterizedTest
    @CsvSource({
        "BENDING, 0.80",
        "TENSION, 0.80",
        "SHEAR, 0.80",
        "COMPRESSION, 0.80",
        "BEARING, 1.0",
        "MODULUS, 0.95",
        "MODULUS_MIN, 0.95"
    })
    void incising(DesignValue value, double expected) {
        assertThat(value(Section4_3.incising(value, Treatment.INCISED)).value()).isEqualTo(expected);
        assertThat(value(Section4_3.incising(value, Treatment.PRESERVED)).value())
                .isEqualTo(1);
        assertThat(value(Section4_3.incising(value, Treatment.NONE)).value()).isEqualTo(1);
        assertThat(refusal(Section4_3.incising(value, Treatment.FIRE_RETARDANT)))
                .contains("treater");
    }

    /** NDS 2018, 4.3.9: Cr = 1.15, read in a public copy. */
    @ParameterizedTest
    @CsvSource({
        "3, 16, true, 1.5, 1.15",
        "3, 24, true, 1.5, 1.15",
        "3, 1.5, true, 1.5, 1.15",
        "8, 24, true, 3.5, 1.15",
        "2, 16, true, 1.5, 1",
        "3, 24.01, true, 1.5, 1",
        "3, 16, false, 1.5, 1",
        "3, 16, true, 5.5, 1",
        "3, 16, true, 1.25, 1"
    })
    void repetitive(int members, double spacing, boolean joined, double thickness, double expected) {
        assertThat(Section4_3.repetitive(members, spacing * INCH, joined, thickness * INCH)
                        .value())
                .isEqualTo(expected);
    }

    @Test
    void aMemberAloneIsNotRepetitive() {
        assertThat(Section4_3.repetitive(1, Double.POSITIVE_INFINITY, true, 1.5 * INCH)
                        .value())
                .isEqualTo(1);
        assertThatIllegalArgumentException().isThrownBy(() -> Section4_3.repetitive(3, Double.NaN, true, 1.5 * INCH));
        assertThatIllegalArgumentException().isThrownBy(() -> Section4_3.repetitive(3, 0, true, 1.5 * INCH));
    }
}
