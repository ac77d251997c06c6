package dev.underprop.engine.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CitationTest {
    private static final Citation PLACE = Citation.read("NDS", "2018", "3.3.3.7");

    @Test
    void textNamesDocumentEditionAndPlace() {
        assertThat(PLACE.text()).isEqualTo("NDS 2018, 3.3.3.7");
        assertThat(Citation.remembered("common practice", "", "no source").text())
                .isEqualTo("common practice, no source");
    }

    @Test
    void standingSaysHowItWasTaken() {
        assertThat(PLACE.standing().words()).isEqualTo("read");
        assertThat(Citation.remembered("NDS", "2018", "3.1").standing().words()).isEqualTo("from memory");
    }

    @Test
    void needsADocumentAndAPlace() {
        assertThatIllegalArgumentException().isThrownBy(() -> Citation.read(" ", "2018", "3.1"));
        assertThatIllegalArgumentException().isThrownBy(() -> Citation.read("NDS", "2018", ""));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void citedValueIsFinite(double value) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Cited(value, "fb", PLACE));
    }

    @Test
    void citedValueHasASymbolAndARefusalAReason() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Cited(1, "", PLACE));
        assertThatIllegalArgumentException().isThrownBy(() -> new Outcome.Refused("", PLACE));
    }

    @Test
    void basisNamesItsEditions() {
        assertThat(Basis.US_ASD.name()).isEqualTo("us-asd");
        assertThat(Basis.US_ASD.editions())
                .containsExactly("NDS 2018", "AISC 360-16", "ACI 318-19", "ASCE 7-16", "IBC 2021", "IRC 2021");
        assertThatIllegalArgumentException().isThrownBy(() -> new Basis("none", java.util.List.of()));
    }
}
