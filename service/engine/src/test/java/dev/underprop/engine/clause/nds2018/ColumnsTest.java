package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Units.INCH;
import static dev.underprop.engine.clause.nds2018.Units.PSI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.clause.nds2018.Section15_3.By;
import dev.underprop.engine.clause.nds2018.Section15_3.Pattern;
import dev.underprop.engine.standard.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Columns, worked by hand; published cases stand among the fixtures. */
class ColumnsTest {

    private static Outcome slenderness(double ratio, boolean construction) {
        return Section3_7.slenderness(ratio * 0.0889, 0.0889, construction);
    }

    @Test
    void slendernessIsRefusedBeyondFiftyAndDuringConstructionSeventyFive() {
        assertThat(slenderness(50, false)).isInstanceOf(Outcome.Value.class);
        assertThat(slenderness(50.1, false)).isInstanceOf(Outcome.Refused.class);
        assertThat(slenderness(75, true)).isInstanceOf(Outcome.Value.class);
        assertThat(((Outcome.Refused) slenderness(75.1, true)).reason()).contains("above 75");
    }

    /** f = 1: (2/1.6) - sqrt((2/1.6)² - 1/0.8) = 1.25 - sqrt(0.3125). */
    @Test
    void stability() {
        assertThat(Section3_7.stability(5e6, 5e6).value()).isCloseTo(1.25 - Math.sqrt(0.3125), within(1e-12));
        assertThat(Section3_7.stability(5e15, 5e6).value()).isCloseTo(1, within(1e-8));
        assertThat(Section3_7.criticalStress(1e9, 10).value()).isCloseTo(8.22e6, within(1e-6));
        assertThat(Section15_3.stability(0.6, 5e6, 5e6).value())
                .isCloseTo(0.6 * (1.25 - Math.sqrt(0.3125)), within(1e-12));
    }

    /** Three boards of 1 1/2 in by 5 1/2 in, nails of 0.192 in and 4 1/8 in or more, as on the page summarised. */
    @ParameterizedTest
    @CsvSource({
        "4.125, 3.0, 5.0, 2, 2.25, 1.5, true, ''",
        "4.120, 3.0, 5.0, 2, 2.25, 1.5, true, three quarters",
        "4.125, 2.8, 5.0, 2, 2.25, 1.5, true, end distance",
        "4.125, 3.5, 5.0, 2, 2.25, 1.5, true, end distance",
        "4.125, 3.0, 3.8, 2, 2.25, 1.5, true, spacing in a row",
        "4.125, 3.0, 9.1, 2, 2.25, 1.5, true, spacing in a row",
        "4.125, 3.0, 5.0, 1, 2.25, 1.5, true, two rows",
        "4.125, 3.0, 5.0, 2, 1.90, 1.5, true, between rows",
        "4.125, 3.0, 5.0, 2, 2.25, 0.9, true, edge distance",
        "4.125, 3.0, 5.0, 2, 2.25, 1.5, false, opposite faces"
    })
    void nails(
            double length,
            double end,
            double spacing,
            int rows,
            double between,
            double edge,
            boolean detailed,
            String reason) {
        Pattern pattern = new Pattern(
                By.NAILS,
                0.192 * INCH,
                length * INCH,
                end * INCH,
                spacing * INCH,
                rows,
                between * INCH,
                edge * INCH,
                detailed);
        check(Section15_3.factor(3, 1.5 * INCH, 5.5 * INCH, pattern), 0.6, reason);
    }

    /** Two boards of 1 1/2 in by 3 1/2 in, bolts of 1/2 in: 3 1/2 to 4.2 in from the end, 2 to 9 in apart. */
    @ParameterizedTest
    @CsvSource({
        "2, 1.5, 3.5, 4.0, 2.00, true, ''",
        "2, 1.5, 3.4, 4.0, 2.00, true, end distance",
        "2, 1.5, 4.3, 4.0, 2.00, true, end distance",
        "2, 1.5, 3.5, 1.9, 2.00, true, spacing in a row",
        "2, 1.5, 3.5, 4.0, 0.70, true, edge distance",
        "2, 1.5, 3.5, 4.0, 2.00, false, washers",
        "1, 1.5, 3.5, 4.0, 2.00, true, two to five",
        "6, 1.5, 3.5, 4.0, 2.00, true, two to five",
        "2, 1.4, 3.5, 4.0, 2.00, true, thinner"
    })
    void bolts(int plies, double thickness, double end, double spacing, double edge, boolean detailed, String reason) {
        Pattern pattern = new Pattern(
                By.BOLTS, 0.5 * INCH, Double.NaN, end * INCH, spacing * INCH, 1, Double.NaN, edge * INCH, detailed);
        check(Section15_3.factor(plies, thickness * INCH, 3.5 * INCH, pattern), 0.75, reason);
    }

    private static void check(Outcome got, double factor, String reason) {
        if (reason.isEmpty()) {
            assertThat(((Outcome.Value) got).cited().value()).isEqualTo(factor);
        } else {
            assertThat(((Outcome.Refused) got).reason()).contains(reason);
        }
    }

    /**
     * fc 100, F'c 1000, e/d 1/6 both ways, FcE 1000 and 500, FbE 1000, F'b 1000 psi: 0.01 + 100·1.0234/(1000·0.9) +
     * 100·(1 + 0.234·0.2 + 0.234·0.01)/(1000·(1 - 0.2 - 0.01)).
     */
    @Test
    void anEccentricLoadBendsBothWays() {
        Section15_4.Way edge = new Section15_4.Way(1, 6, 1000 * PSI, 1000 * PSI);
        Section15_4.Way flat = new Section15_4.Way(0.5, 3, 500 * PSI, 1000 * PSI);
        double used = Section15_4.interaction(100 * PSI, 1000 * PSI, edge, flat, 1000 * PSI)
                .value();

        assertThat(used).isCloseTo(0.01 + 102.34 / 900 + 104.914 / 790, within(1e-12));
        assertThat(Section15_4.interaction(501 * PSI, 1000 * PSI, edge, flat, 1000 * PSI)
                        .value())
                .isGreaterThan(1e9);
    }

    /** Stress that reaches what buckles one way or the other leaves nothing. */
    @Test
    void atTheCriticalStressNothingIsLeft() {
        Section15_4.Way weak = new Section15_4.Way(0.1, 3, 100 * PSI, 1000 * PSI);
        Section15_4.Way straight = new Section15_4.Way(0, 6, 1000 * PSI, 1000 * PSI);
        Section15_4.Way off = new Section15_4.Way(1, 6, 100 * PSI, 1000 * PSI);
        Section15_4.Way strong = new Section15_4.Way(0.1, 3, 1000 * PSI, 1000 * PSI);

        assertThat(Section15_4.interaction(100 * PSI, 1000 * PSI, straight, weak, 1000 * PSI)
                        .value())
                .isGreaterThan(1e9);
        assertThat(Section15_4.interaction(100 * PSI, 1000 * PSI, off, strong, 1000 * PSI)
                        .value())
                .isGreaterThan(1e9);
    }

    @Test
    void refusalsOfNailsAndBoltsCiteTheirOwnRules() {
        assertThat(loose(By.NAILS)).isEqualTo("NDS 2018, 15.3.3");
        assertThat(loose(By.BOLTS)).isEqualTo("NDS 2018, 15.3.4");
    }

    private static String loose(By by) {
        Pattern pattern = new Pattern(by, 0.01, 0.1, 0.1, 0.1, 1, 0.1, 0.05, false);
        return ((Outcome.Refused) Section15_3.factor(2, 1.5 * INCH, 3.5 * INCH, pattern))
                .citation()
                .text();
    }

    @Test
    void endGrainBearsThreeQuartersWithoutSteel() {
        assertThat(Section3_10.endGrain(8e6, false).value()).isEqualTo(6e6);
        assertThat(Section3_10.endGrain(8e6, true).value()).isEqualTo(8e6);
    }
}
