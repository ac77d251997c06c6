package dev.underprop.engine.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What holds of every author alike, and where they differ. Published figures stand in the fixtures. */
class BearingMethodTest {

    private static double rad(double degrees) {
        return StrictMath.toRadians(degrees);
    }

    private static double ultimate(BearingMethod method, double cohesion, double degrees, Base base) {
        return method.ultimate(new Soil(cohesion, rad(degrees), 18_000, 9_000), base)
                .value();
    }

    @ParameterizedTest
    @EnumSource(BearingMethod.class)
    void neverFallsAsTheGroundGetsStronger(BearingMethod method) {
        Base base = Base.of(0.4, 0.6);
        double before = 0;
        for (int half = 0; half <= 90; half++) {
            double now = ultimate(method, 5_000, half / 2.0, base);
            assertThat(now).as("at " + half / 2.0).isGreaterThanOrEqualTo(before);
            before = now;
        }
        assertThat(ultimate(method, 6_000, 20, base)).isGreaterThan(ultimate(method, 5_000, 20, base));
    }

    /** A hundred sizes of a square: the load that is allowed never falls as the square grows. */
    @ParameterizedTest
    @EnumSource(BearingMethod.class)
    void aLargerSquareNeverCarriesLess(BearingMethod method) {
        double before = 0;
        for (int i = 1; i <= 100; i++) {
            double size = i * 0.02;
            double load = ultimate(method, 2_000, 28, Base.of(size, size)) * size * size;
            assertThat(load).isGreaterThan(before);
            before = load;
        }
    }

    @ParameterizedTest
    @EnumSource(BearingMethod.class)
    void beyondTheTablesThereIsNothing(BearingMethod method) {
        assertThat(method.factors(rad(45)).overburden()).isGreaterThan(100);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ultimate(method, 0, 45.1, Base.of(1, 1)))
                .withMessageContaining("45 degrees");
    }

    /** Clay of 50 kPa under 0.4 m by 0.6 m, 9 kPa beside it: 5.1416 x 50 x (1 + 0.2 x 2/3) + 9. Terzaghi: 5.7 x 1.2 x 50 + 9. */
    @ParameterizedTest
    @CsvSource({
        "MEYERHOF, 300.357",
        "HANSEN, 300.357",
        "VESIC, 300.357",
        "EN_1997, 300.357",
        "TERZAGHI, 351",
        "TERZAGHI_KUMBHOJKAR, 351"
    })
    void clay(BearingMethod method, double kPa) {
        assertThat(ultimate(method, 50_000, 0, Base.of(0.6, 0.4)) / 1000).isCloseTo(kPa, within(0.001));
    }

    /** Between the angles of a table the smaller one counts, and Terzaghi's own chart is not Kumbhojkar's. */
    @Test
    void nGammaOfTerzaghiIsTakenFromBelow() {
        assertThat(BearingMethod.TERZAGHI.factors(rad(33.9)).weight()).isEqualTo(19.7);
        assertThat(BearingMethod.TERZAGHI.factors(rad(34)).weight()).isEqualTo(35);
        assertThat(BearingMethod.TERZAGHI_KUMBHOJKAR.factors(rad(33.9)).weight())
                .isEqualTo(31.94);
        assertThat(BearingMethod.TERZAGHI_KUMBHOJKAR.factors(rad(34)).weight()).isEqualTo(38.04);
    }

    /** Water at the base halves what sand bears, about: both unit weights fall to 10.19 of 18 kN/m3. */
    @Test
    void waterTakesFromBothWeights() {
        GroundWater deep = new GroundWater(18_000, 20_000, 5);
        GroundWater atBase = new GroundWater(18_000, 20_000, 0.5);
        GroundWater halfway = new GroundWater(18_000, 20_000, 0.7);

        assertThat(deep.overburden(0.5)).isEqualTo(9_000);
        assertThat(atBase.overburden(0.5)).isEqualTo(9_000);
        assertThat(new GroundWater(18_000, 20_000, 0).overburden(0.5)).isCloseTo(5_095, within(1e-9));
        assertThat(deep.below(0.5, 0.4)).isEqualTo(18_000);
        assertThat(atBase.below(0.5, 0.4)).isEqualTo(10_190);
        assertThat(halfway.below(0.5, 0.4)).isCloseTo((18_000 + 10_190) / 2.0, within(1e-6));
    }

    /** Below the middle of a square at no depth the whole pressure, far beside it nothing, and the four corners add up. */
    @Test
    void stressBelowAndBesideARectangle() {
        assertThat(Stress.share(0.5, 0.5, 0, 0, 1e-4)).isCloseTo(1, within(1e-6));
        assertThat(Stress.share(0.5, 0.5, 3, 0, 0.5)).isBetween(0.0, 1e-3);
        assertThat(Stress.share(0.5, 0.5, 0.25, 0.25, 0.5))
                .isCloseTo(Stress.corner(1, 1).value(), within(1e-12));
        assertThat(Stress.share(0.4, 0.6, 1, -0.3, 0.7)).isCloseTo(Stress.share(0.4, 0.6, -1, 0.3, 0.7), within(1e-12));
    }

    /** Far away a rectangle is a point load. */
    @Test
    void aRectangleFromAfarIsAPoint() {
        double rectangle = 1000 * Stress.share(0.2, 0.3, 3, 1, 4);
        double point = Stress.point(1000 * 0.2 * 0.3, Math.sqrt(10), 4).value();

        assertThat(rectangle).isCloseTo(point, within(point * 2e-3));
    }
}
