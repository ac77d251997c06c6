package dev.underprop.engine.clause.westergaard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.clause.westergaard.Slab.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A slab whose radius of relative stiffness is 1 m: h 0.2 m, k 40 MN/m³, E 12·(1 - 0.15²)·k/h³. */
class SlabTest {

    private static final Slab SLAB = new Slab(0.2, 12 * (1 - 0.15 * 0.15) * 40e6 / 0.008, 40e6);

    /** Twice that radius. */
    private static final Slab TWICE = new Slab(0.2, 16 * SLAB.modulus(), 40e6);

    @Test
    void stiffness() {
        assertThat(SLAB.stiffnessRadius().value()).isCloseTo(1, within(1e-12));
    }

    /** The rules hold for loads up to three tenths of that radius. */
    @Test
    void wideLoadsAreBeyondTheRules() {
        assertThat(SLAB.holdsFor(0.29)).isTrue();
        assertThat(SLAB.holdsFor(0.31)).isFalse();
        assertThat(TWICE.holdsFor(0.59)).isTrue();
        assertThat(TWICE.holdsFor(0.61)).isFalse();
        assertThat(TWICE.holdsFor(0.3 * TWICE.stiffnessRadius().value())).isTrue();
    }

    /** There the other rule gives 1.7234 h. */
    @Test
    void aLoadJustWideEnoughCountsAsItIs() {
        assertThat(SLAB.resistingRadius(1.724 * 0.2).value()).isEqualTo(1.724 * 0.2);
    }

    /** root(1.6·0.01 + 0.04) - 0.135 below 1.724 h, which is 0.3448 m; the radius itself above. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.10164319", "0.34, 0.33929948", "0.35, 0.35", "0.5, 0.5"})
    void resistingRadius(double radius, double expected) {
        assertThat(SLAB.resistingRadius(radius).value()).isCloseTo(expected, within(1e-8));
    }

    /** 0.316·P/h²·(4·log(1/b) + 1.069); 0.803·P/h²·(4·log(1/a) + 0.666·a - 0.034); 3·P/h²·(1 - (1.772·a)^0.72). */
    @Test
    void stresses() {
        double b = SLAB.resistingRadius(0.1).value();
        assertThat(SLAB.interior(4000, 0.1).value()).isCloseTo(31_600 * (-4 * Math.log10(b) + 1.069), within(1e-6));
        assertThat(SLAB.edge(4000, 0.1).value()).isCloseTo(80_300 * (4 + 0.0666 - 0.034), within(1e-6));
        assertThat(SLAB.corner(4000, 0.1).value()).isCloseTo(300_000 * (1 - Math.pow(0.1772, 0.72)), within(1e-6));
    }

    /** P/(8·k·l²)·(1 + (ln(a/2) - 0.673)·a²/(2·pi)); ln 0.05 is -2.995732. */
    @Test
    void deflection() {
        assertThat(SLAB.interiorDeflection(32e6, 0.1).value())
                .isCloseTo(0.1 * (1 - 3.668732 * 0.01 / (2 * Math.PI)), within(1e-8));
    }

    /** On a slab of twice that radius, four times as far spread. */
    @Test
    void spread() {
        assertThat(SLAB.spread(Place.INTERIOR)).isCloseTo(8, within(1e-9));
        assertThat(TWICE.spread(Place.INTERIOR)).isCloseTo(32, within(1e-9));
        assertThat(TWICE.spread(Place.EDGE)).isCloseTo(4 / 0.431, within(1e-9));
        assertThat(TWICE.spread(Place.CORNER)).isCloseTo(4 / 1.205, within(1e-9));
    }
}
