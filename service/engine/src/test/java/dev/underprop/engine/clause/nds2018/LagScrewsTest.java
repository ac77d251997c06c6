package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.INCH;
import static dev.underprop.engine.clause.nds2018.Samples.POUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.standard.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lag screws by sections 11.3 and 12. */
class LagScrewsTest {

    private static final double D = 0.375 * INCH;

    private static double value(Outcome outcome) {
        return ((Outcome.Value) outcome).cited().value();
    }

    private static boolean refused(Outcome outcome) {
        return outcome instanceof Outcome.Refused;
    }

    @Test
    void sizesAreThoseOfTheTable() {
        assertThat(LagSize.of(D)).contains(LagSize.THREE_EIGHTHS);
        assertThat(LagSize.of(0.00953)).contains(LagSize.THREE_EIGHTHS);
        assertThat(LagSize.of(0.010)).isEmpty();
        assertThat(LagSize.of(Double.NaN)).isEmpty();
    }

    @Test
    void rootsAreThinnerThanTheScrewAndGrowWithIt() {
        double last = 0;
        for (LagSize size : LagSize.values()) {
            assertThat(size.root().value()).isGreaterThan(last).isLessThan(size.diameter());
            last = size.root().value();
        }
    }

    /** Four diameters of 3/8 in are 1.5 in. */
    @Test
    void penetrationBelowFourDiametersIsRefused() {
        assertThat(value(Section12_1.penetration(D, 1.5 * INCH))).isEqualTo(1.5 * INCH);
        assertThat(refused(Section12_1.penetration(D, 1.499 * INCH))).isTrue();
    }

    /** Seven diameters are 2.625 in, four 1.5 in; half of them is the least. */
    @ParameterizedTest
    @CsvSource({
        "PARALLEL, 2.625, 1",
        "PARALLEL, 6, 1",
        "PARALLEL, 2.1, 0.8",
        "PARALLEL, 1.3125, 0.5",
        "PERPENDICULAR, 1.5, 1",
        "PERPENDICULAR, 0.75, 0.5"
    })
    void endDistance(Grain grain, double inches, double factor) {
        assertThat(value(Section12_5.end(grain, D, inches * INCH))).isCloseTo(factor, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"PARALLEL, 1.312", "PERPENDICULAR, 0.749"})
    void nearerToTheEndThereIsNoValue(Grain grain, double inches) {
        assertThat(refused(Section12_5.end(grain, D, inches * INCH))).isTrue();
    }

    /** 1.5 diameters are 0.5625 in; a screw of 3 in is slender, one of 2.25 in is not. */
    @ParameterizedTest
    @CsvSource({
        "PARALLEL, 3, 0.5625, 0, true",
        "PARALLEL, 3, 0.562, 0, false",
        "PARALLEL, 3, 0.5625, 1.2, false",
        "PARALLEL, 2.25, 0.5625, 1.2, true",
        "PARALLEL, 3, 2.5, 4, true",
        "PARALLEL, 3, 1.99, 4, false",
        "PERPENDICULAR, 3, 1.5, 0, true",
        "PERPENDICULAR, 3, 1.499, 0, false",
        "PARALLEL, 2.25, 3, 5, true",
        "PARALLEL, 2.25, 3, 5.01, false"
    })
    void edgeDistance(Grain grain, double length, double edge, double rows, boolean kept) {
        Outcome outcome = Section12_5.edge(grain, D, length * INCH, edge * INCH, rows * INCH);

        assertThat(refused(outcome)).isEqualTo(!kept);
    }

    @Test
    void fiveDiametersApart() {
        assertThat(value(Section12_5.spacing(D, 1.875 * INCH))).isEqualTo(1);
        assertThat(refused(Section12_5.spacing(D, 1.874 * INCH))).isTrue();
    }

    /** 7·0.375/2 is 1.3125; 1.5·0.375 is 0.5625; 5·0.5 is 2.5. */
    @Test
    void refusalsSayHowFarScrewsStandAndShould() {
        assertThat(reason(Section12_5.end(Grain.PARALLEL, D, INCH)))
                .isEqualTo("lag screws stand 1.00 in from the end of the timber, not 1.31 in");
        assertThat(reason(Section12_5.edge(Grain.PARALLEL, D, INCH, 0.5 * INCH, 0)))
                .isEqualTo("lag screws stand 0.50 in from an edge, not 0.56 in");
        assertThat(reason(Section12_5.spacing(INCH / 2, 1.5 * INCH)))
                .isEqualTo("lag screws stand 1.50 in from each other, not 2.50 in");
    }

    private static String reason(Outcome outcome) {
        return ((Outcome.Refused) outcome).reason();
    }

    /** A row of Table 11.3.6C, from memory: 1 in, 4 in apart, E of 1.4e6 and 30e6 psi, 5 in² of wood, 12 times the steel. */
    @ParameterizedTest
    @CsvSource({"2, 0.97", "3, 0.89", "4, 0.80", "5, 0.70", "6, 0.62", "7, 0.55", "8, 0.49", "9, 0.44", "10, 0.40"})
    void groupAction(int count, double printed) {
        double wood = 1.4e6 * 5 * POUND;
        double steel = 30e6 * 5 / 12 * POUND;

        assertThat(Section11_3.groupAction(count, INCH, 4 * INCH, wood, steel).value())
                .isCloseTo(printed, within(0.005));
    }

    @Test
    void oneScrewIsNoGroup() {
        assertThat(Section11_3.groupAction(1, D, Double.NaN, 1e6, 1e6).value()).isEqualTo(1);
    }

    @Test
    void wetWoodTakesThirtyPercent() {
        assertThat(Section11_3.wetService(Moisture.DRY).value()).isEqualTo(1);
        assertThat(Section11_3.wetService(Moisture.WET).value()).isEqualTo(0.7);
    }

    /** Each mode but IIIs, which Table 12K has, where it governs; worked out apart from this code. Lengths in in, Z in lb. */
    @ParameterizedTest
    @CsvSource({
        "Im, THREE_EIGHTHS, PARALLEL, 0.25, 0.5, 79.76500",
        "Is, ONE, PARALLEL, 8, 0.01, 120.60750",
        "II, ONE, PERPENDICULAR, 4, 0.12, 515.76963",
        "IIIm, THREE_EIGHTHS, PERPENDICULAR, 1, 0.5, 123.69171",
        "IV, THREE_EIGHTHS, PARALLEL, 3, 0.5, 254.07579"
    })
    void everyModeGovernsSomewhere(
            String mode, LagSize size, Grain grain, double length, double plate, double expected) {
        double z = Section12_3.lateral(size, grain, 0.43, length * INCH, plate * INCH)
                .value();

        assertThat(z / POUND).as(mode).isCloseTo(expected, within(1e-5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0, -1, Double.POSITIVE_INFINITY})
    void refusesWhatIsNoSize(double bad) {
        assertThatIllegalArgumentException().isThrownBy(() -> Section12_1.penetration(bad, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Section12_2.lagWithdrawal(bad, D));
        assertThatIllegalArgumentException().isThrownBy(() -> Section12_2.lagWithdrawal(0.5, bad));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Section12_3.lateral(LagSize.HALF, Grain.PARALLEL, 0.5, bad, 0.01));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Section12_3.lateral(LagSize.HALF, Grain.PARALLEL, 0.5, 0.1, bad));
        assertThatIllegalArgumentException().isThrownBy(() -> Section12_5.spacing(D, bad));
        assertThatIllegalArgumentException().isThrownBy(() -> Section12_5.end(Grain.PARALLEL, D, bad));
        assertThatIllegalArgumentException().isThrownBy(() -> Section11_3.groupAction(2, D, bad, 1, 1));
    }
}
