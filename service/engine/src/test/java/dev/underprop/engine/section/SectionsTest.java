package dev.underprop.engine.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SectionsTest {
    private static final double INCH = 0.0254;

    /** NDS Supplement 2018, Table 1B: dressed sizes read, A, S and I computed from them, in, rounded to 3 decimals. */
    @ParameterizedTest
    @CsvSource({
        "1.5, 3.5, 5.25, 3.062, 5.359",
        "1.5, 5.5, 8.25, 7.562, 20.797",
        "1.5, 7.25, 10.875, 13.141, 47.635",
        "1.5, 9.25, 13.875, 21.391, 98.932",
        "1.5, 11.25, 16.875, 31.641, 177.979",
        "3.5, 3.5, 12.25, 7.146, 12.505",
        "3.5, 5.5, 19.25, 17.646, 48.526",
        "5.5, 5.5, 30.25, 27.729, 76.255",
        "5.5, 7.5, 41.25, 51.562, 193.359",
        "7.5, 7.5, 56.25, 70.312, 263.672"
    })
    void tabulatedProperties(double b, double d, double area, double modulus, double inertia) {
        RectangularSection section = new RectangularSection(b * INCH, d * INCH);

        assertThat(section.area() / (INCH * INCH)).isCloseTo(area, within(0.00051));
        assertThat(section.sectionModulus() / (INCH * INCH * INCH)).isCloseTo(modulus, within(0.00051));
        assertThat(section.inertia() / (INCH * INCH * INCH * INCH)).isCloseTo(inertia, within(0.00051));
    }

    @Test
    void pliesAddUp() {
        RectangularSection ply = new RectangularSection(1.5 * INCH, 9.25 * INCH);
        BuiltUpSection beam = new BuiltUpSection(ply, 3);
        RectangularSection solid = new RectangularSection(4.5 * INCH, 9.25 * INCH);

        assertThat(beam.breadth()).isCloseTo(solid.breadth(), within(1e-15));
        assertThat(beam.depth()).isEqualTo(solid.depth());
        assertThat(beam.area()).isCloseTo(solid.area(), within(1e-15));
        assertThat(beam.sectionModulus()).isCloseTo(solid.sectionModulus(), within(1e-15));
        assertThat(beam.inertia()).isCloseTo(solid.inertia(), within(1e-15));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 0, -0.04})
    void refusesWhatIsNoSize(double bad) {
        assertThatIllegalArgumentException().isThrownBy(() -> new RectangularSection(bad, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new RectangularSection(0.1, bad));
    }

    @Test
    void refusesNoPlies() {
        assertThatIllegalArgumentException().isThrownBy(() -> new BuiltUpSection(new RectangularSection(0.04, 0.2), 0));
    }
}
