package dev.underprop.engine.clause.irc2021;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** IRC 2021, Table R602.3(1), built-up girders and beams, from memory. */
class GirderNailTest {

    private static final double INCH = 0.0254;

    /** Diameter and length (in), greatest spacing (in), nails at ends, whether from opposite sides. */
    @ParameterizedTest
    @CsvSource({
        "0.192, 4, 32, 2, false",
        "0.207, 4.5, 32, 2, false",
        "0.192, 3.5, 24, 3, true",
        "0.162, 3.5, 24, 3, true",
        "0.131, 3, 24, 3, true",
        "0.128, 3, 24, 3, true"
    })
    void aNailCountsAsTheStoutestRowItFulfils(double diameter, double length, double apart, int ends, boolean both) {
        GirderNail nail = GirderNail.of(diameter * INCH, length * INCH).orElseThrow();

        assertThat(nail.spacing().value() / INCH).isCloseTo(apart, within(1e-9));
        assertThat(nail.atEnds().value()).isEqualTo(ends);
        assertThat(nail.oppositeSides()).isEqualTo(both);
        assertThat(nail.allows(apart * INCH)).isTrue();
        assertThat(nail.allows((apart + 0.01) * INCH)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"0.127, 3", "0.128, 2.99", "0.113, 2.5"})
    void thinnerOrShorterNailsFulfilNone(double diameter, double length) {
        assertThat(GirderNail.of(diameter * INCH, length * INCH)).isEmpty();
    }

    @Test
    void theTableSpeaksOfNominalTwoInchLayers() {
        assertThat(GirderNail.layers(1.5 * INCH)).isTrue();
        assertThat(GirderNail.layers(1.53 * INCH)).isTrue();
        assertThat(GirderNail.layers(2 * INCH)).isFalse();
        assertThat(GirderNail.layers(1.25 * INCH)).isFalse();
    }
}
