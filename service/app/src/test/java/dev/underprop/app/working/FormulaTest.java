package dev.underprop.app.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The reading of formulas itself: what cannot tell a wrong formula from a right one shows nothing. */
class FormulaTest {

    private static final Map<String, Double> KNOWN = Map.of("b", 2.0, "Fb*", 3.0, "F'c", 4.0, "n", 5.0);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "b × Fb*|6",
                "b + Fb* × F'c|14",
                "n - b - Fb*|0",
                "Fb* / b / F'c|0.375",
                "n × b^2 / 4|5",
                "( 1 + b )^2|9",
                "root( F'c × F'c )|4",
                "0.5^( b + 1 )|0.125",
                "min( n , b , Fb* ) × max( 1 , F'c )|8",
                "b^( 2 × b )|16",
                "π × b|6.283185307179586",
                "log( 100 ) + cos( 0 )|3"
            })
    void reads(String formula, double value) {
        assertThat(Formula.value(formula, KNOWN)).isCloseTo(value, within(1e-12));
    }

    @Test
    void refusesWhatIsNotKnown() {
        assertThatThrownBy(() -> Formula.value("b × Fb", KNOWN)).isInstanceOf(NumberFormatException.class);
        assertThatThrownBy(() -> Formula.value("b b", KNOWN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Formula.value("( b", KNOWN)).isInstanceOf(IllegalArgumentException.class);
    }
}
