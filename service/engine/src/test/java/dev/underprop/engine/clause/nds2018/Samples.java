package dev.underprop.engine.clause.nds2018;

import static org.assertj.core.api.Assertions.assertThat;

import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.material.WoodGrade.Sizes;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Outcome;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Fixtures;
import dev.underprop.fixtures.Inputs;
import dev.underprop.fixtures.Verdict;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/**
 * Grades of the NDS Supplement 2018 (psi), read in public copies of Tables 4A, 4B and 4D, and what tests of clauses
 * have in common.
 */
final class Samples {

    static final double INCH = 0.0254;
    static final double PSI = 4.4482216152605 / (INCH * INCH);

    static final double POUND = 4.4482216152605;
    static final double PSF = POUND / (144 * INCH * INCH);

    static final WoodGrade DF_SELECT =
            grade("DF-L", "Select Structural", Sizes.WESTERN_DIMENSION, 1500, 1000, 180, 625, 1700, 1.9e6, 690e3, 0.5);
    static final WoodGrade DF_1 =
            grade("DF-L", "No.1", Sizes.WESTERN_DIMENSION, 1000, 675, 180, 625, 1500, 1.7e6, 620e3, 0.5);
    static final WoodGrade DF_2 =
            grade("DF-L", "No.2", Sizes.WESTERN_DIMENSION, 900, 575, 180, 625, 1350, 1.6e6, 580e3, 0.5);
    static final WoodGrade DF_STUD =
            grade("DF-L", "Stud", Sizes.WESTERN_STUD, 700, 450, 180, 625, 850, 1.4e6, 510e3, 0.5);
    static final WoodGrade HF_1 =
            grade("HF", "No.1", Sizes.WESTERN_DIMENSION, 975, 625, 150, 405, 1350, 1.5e6, 550e3, 0.43);
    static final WoodGrade HF_2 =
            grade("HF", "No.2", Sizes.WESTERN_DIMENSION, 850, 525, 150, 405, 1300, 1.3e6, 470e3, 0.43);
    static final WoodGrade SPF_2 =
            grade("SPF", "No.2", Sizes.WESTERN_DIMENSION, 875, 450, 135, 425, 1150, 1.4e6, 510e3, 0.42);
    static final WoodGrade DF_TIMBER =
            grade("DF-L", "No.1 Posts", Sizes.TIMBER_4D, 1200, 825, 170, 625, 1000, 1.6e6, 580e3, 0.5);

    /** Conversion to SI and back leaves a hair, which would push a figure that was rounded from an exact tie off its tie. */
    private static final MathContext TWELVE_DIGITS = new MathContext(12);

    private Samples() {}

    /** Southern Pine No.2 by nominal width (in), Table 4B with the values in force since 2013. */
    static WoodGrade southernPine(int nominal) {
        double[] values = switch (nominal) {
            case 4 -> new double[] {1100, 675, 1450};
            case 6 -> new double[] {1000, 600, 1400};
            case 8 -> new double[] {925, 550, 1350};
            case 10 -> new double[] {800, 475, 1300};
            case 12 -> new double[] {750, 450, 1250};
            default -> throw new IllegalArgumentException("no such width " + nominal);
        };
        return grade("SP", "No.2", Sizes.SOUTHERN_PINE, values[0], values[1], 175, 565, values[2], 1.4e6, 510e3, 0.55);
    }

    private static WoodGrade grade(
            String species,
            String grade,
            Sizes sizes,
            double fb,
            double ft,
            double fv,
            double fcPerp,
            double fc,
            double e,
            double eMin,
            double gravity) {
        return new WoodGrade(
                species,
                grade,
                fb * PSI,
                ft * PSI,
                fv * PSI,
                fcPerp * PSI,
                fc * PSI,
                e * PSI,
                eMin * PSI,
                gravity,
                sizes,
                Citation.read("NDS Supplement", "2018", "chapter 4"));
    }

    /** Dressed section of a nominal 2 in board. */
    static RectangularSection twoBy(int nominal) {
        return inches(1.5, dressedWidth(nominal));
    }

    static RectangularSection inches(double breadth, double depth) {
        return new RectangularSection(breadth * INCH, depth * INCH);
    }

    /** The value of an outcome that must not be a refusal. */
    static Cited value(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Value.class);
        return ((Outcome.Value) outcome).cited();
    }

    /** The reason of an outcome that must be a refusal. */
    static String refusal(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Refused.class);
        return ((Outcome.Refused) outcome).reason();
    }

    /** A factor of 1, said. */
    static Cited one(String symbol) {
        return factor(symbol, 1);
    }

    static Cited factor(String symbol, double value) {
        return new Cited(value, symbol, Citation.read("NDS", "2018", "as the example states"));
    }

    static Cited adjusted(DesignValue value, WoodGrade grade, Cited... factors) {
        return Section4_3.adjusted(value, grade, List.of(factors));
    }

    /** Every number of every case of a kind. */
    static Stream<Arguments> rows(String kind) {
        return Fixtures.ofKind(kind).stream()
                .flatMap(table -> table.expected().stream().map(row -> Arguments.of(table, row)));
    }

    /** Compares with the printed number, and with the recomputed one where there is one. */
    static void agree(Expected row, double converted) {
        double actual = new BigDecimal(converted).round(TWELVE_DIGITS).doubleValue();
        Verdict printed = row.check(actual);
        assertThat(printed.agrees()).as(printed.message()).isTrue();
        if (row.computed().isPresent()) {
            Verdict computed = row.checkComputed(actual);
            assertThat(computed.agrees()).as(computed.message()).isTrue();
        }
    }

    /** Nominal width (in) of a size such as 2x10. */
    static int nominal(Inputs given) {
        String size = given.text("size");
        assertThat(size).startsWith("2x");
        return Integer.parseInt(size.substring(2));
    }

    static double dressedThickness(double nominal) {
        return nominal - 0.5;
    }

    static double dressedWidth(double nominal) {
        return nominal > 6 ? nominal - 0.75 : nominal - 0.5;
    }
}
