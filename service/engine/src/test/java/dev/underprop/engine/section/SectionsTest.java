package dev.underprop.engine.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SectionsTest {
    private static final double INCH = 0.0254;

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

    /** Pipe of 3.5 in by 0.201 in: 2.083 in² and 1.169 in, worked out apart. A full bar has r = d/4. */
    @Test
    void aRoundTube() {
        RoundTube tube = new RoundTube(3.5 * INCH, 0.201 * INCH);

        assertThat(tube.area() / (INCH * INCH)).isCloseTo(2.083, within(0.0005));
        assertThat(tube.radius() / INCH).isCloseTo(1.169, within(0.0005));
        assertThat(new RoundTube(0.1, 0.05).radius()).isCloseTo(0.025, within(1e-15));
        assertThatIllegalArgumentException().isThrownBy(() -> new RoundTube(0.1, 0.051));
        assertThatIllegalArgumentException().isThrownBy(() -> new RoundTube(Double.NaN, 0.01));
    }
}
