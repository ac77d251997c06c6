package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.DesignValue.BEARING;
import static dev.underprop.engine.clause.nds2018.DesignValue.BENDING;
import static dev.underprop.engine.clause.nds2018.DesignValue.COMPRESSION;
import static dev.underprop.engine.clause.nds2018.DesignValue.TENSION;
import static dev.underprop.engine.clause.nds2018.Samples.DF_1;
import static dev.underprop.engine.clause.nds2018.Samples.DF_2;
import static dev.underprop.engine.clause.nds2018.Samples.DF_STUD;
import static dev.underprop.engine.clause.nds2018.Samples.DF_TIMBER;
import static dev.underprop.engine.clause.nds2018.Samples.INCH;
import static dev.underprop.engine.clause.nds2018.Samples.inches;
import static dev.underprop.engine.clause.nds2018.Samples.one;
import static dev.underprop.engine.clause.nds2018.Samples.refusal;
import static dev.underprop.engine.clause.nds2018.Samples.southernPine;
import static dev.underprop.engine.clause.nds2018.Samples.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.material.WoodGrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Factors of the NDS Supplement 2018, read in public copies of its tables unless said otherwise. */
class Supplement4Test {

    /** Boards sawn to full size in old houses: between two rows, the smaller factor. */
    @ParameterizedTest
    @CsvSource({"2, 8, 1.1", "2, 10, 1.0", "2, 12, 0.9", "3, 10, 1.0", "4, 10, 1.1"})
    void fullSizesTakeTheSmallerFactor(double thickness, double width, double expected) {
        assertThat(size(BENDING, DF_2, thickness, width)).isEqualTo(expected);
    }

    @Test
    void wideStudIsRefused() {
        assertThat(refusal(Supplement4.size(BENDING, DF_STUD, inches(1.5, 7.25))))
                .contains("No. 3");
    }

    /** Table 4B: nominal width, thickness, dressed width, CF for Fb, for Ft and Fc. */
    @ParameterizedTest
    @CsvSource({
        "4, 1.5, 3.5, 1.0, 1.0",
        "10, 1.5, 9.25, 1.0, 1.0",
        "6, 3.5, 5.5, 1.0, 1.0",
        "8, 3.5, 7.25, 1.1, 1.0",
        "12, 3.5, 11.25, 1.1, 1.0",
        "12, 1.5, 13.25, 0.9, 0.9",
        "12, 3.5, 13.25, 0.9, 0.9",
        "6, 3.5, 6.5, 1.0, 1.0"
    })
    void southernPineSizes(int nominal, double thickness, double width, double bending, double others) {
        WoodGrade grade = southernPine(nominal);

        assertThat(size(BENDING, grade, thickness, width)).isEqualTo(bending);
        assertThat(size(TENSION, grade, thickness, width)).isEqualTo(others);
        assertThat(size(COMPRESSION, grade, thickness, width)).isEqualTo(others);
    }

    /** Table 4D: 1 up to 12 in, then (12/d)^(1/9); 13.5 in by pocket calculator 0.98700. */
    @Test
    void timberSizes() {
        assertThat(size(BENDING, DF_TIMBER, 5.5, 7.5)).isEqualTo(1.0);
        assertThat(size(BENDING, DF_TIMBER, 5.5, 11.5)).isEqualTo(1.0);
        assertThat(size(BENDING, DF_TIMBER, 11.5, 13.5)).isCloseTo(0.98700, within(0.00001));
        assertThat(size(COMPRESSION, DF_TIMBER, 11.5, 13.5)).isEqualTo(1.0);
    }

    @Test
    void sizesBesideTheTablesAreRefused() {
        assertThat(refusal(Supplement4.size(BENDING, DF_2, inches(1, 9.25)))).contains("2 to 4 in");
        assertThat(refusal(Supplement4.size(BENDING, DF_2, inches(5.5, 9.25)))).contains("2 to 4 in");
        assertThat(refusal(Supplement4.size(BENDING, DF_STUD, inches(1, 3.5)))).contains("2 to 4 in");
        assertThat(refusal(Supplement4.size(BENDING, southernPine(6), inches(5.5, 5.5))))
                .contains("2 to 4 in");
        assertThat(refusal(Supplement4.size(BENDING, DF_TIMBER, inches(3.5, 9.25))))
                .contains("5 in by 5 in");
    }

    @Test
    void bearingHasNoSizeFactor() {
        assertThatIllegalArgumentException().isThrownBy(() -> Supplement4.size(BEARING, DF_2, inches(1.5, 5.5)));
    }

    /** Wet service factor CM, dimension lumber and timbers. No.1 DF-L 2x8: Fb·CF 1200 psi and Fc·CF 1575 psi, no exception. */
    @ParameterizedTest
    @CsvSource({
        "BENDING, 0.85, 1.0",
        "TENSION, 1.0, 1.0",
        "SHEAR, 0.97, 1.0",
        "BEARING, 0.67, 0.67",
        "COMPRESSION, 0.8, 0.91",
        "MODULUS, 0.9, 1.0",
        "MODULUS_MIN, 0.9, 1.0"
    })
    void wetService(DesignValue value, double dimension, double timber) {
        assertThat(wet(value, DF_1, 7.25, 1.5, Moisture.WET)).isEqualTo(dimension);
        assertThat(wet(value, DF_TIMBER, 7.5, 5.5, Moisture.WET)).isEqualTo(timber);
        assertThat(wet(value, DF_1, 7.25, 1.5, Moisture.DRY)).isEqualTo(1);
        assertThat(wet(value, DF_TIMBER, 7.5, 5.5, Moisture.DRY)).isEqualTo(1);
    }

    @Test
    void wetServiceCitesTheTableOfTheWood() {
        assertThat(Supplement4.wetService(DesignValue.SHEAR, DF_1, Moisture.WET)
                        .citation()
                        .text())
                .contains("Tables 4A and 4B");
        assertThat(Supplement4.wetService(DesignValue.SHEAR, DF_TIMBER, Moisture.DRY)
                        .citation()
                        .text())
                .contains("Table 4D");
    }

    private static double wet(DesignValue value, WoodGrade grade, double width, double thickness, Moisture moisture) {
        return value.factors().contains("CF")
                ? Supplement4.wetService(
                                value, grade, value(Supplement4.size(value, grade, inches(thickness, width))), moisture)
                        .value()
                : Supplement4.wetService(value, grade, moisture).value();
    }

    /** Fb·CF of DF-L No.2: 2x8 1080 psi, 2x6 1170 psi; the exception ends at 1150 psi. SP 2x6 No.2 has 1000 psi. */
    @Test
    void bendingUpTo1150PsiKeepsItsValueWhenWet() {
        assertThat(wet(BENDING, DF_2, 7.25, 1.5, Moisture.WET)).isEqualTo(1.0);
        assertThat(wet(BENDING, DF_2, 5.5, 1.5, Moisture.WET)).isEqualTo(0.85);
        assertThat(wet(BENDING, southernPine(6), 5.5, 1.5, Moisture.WET)).isEqualTo(1.0);
    }

    @Test
    void exceptionsEndOnTheirLimits() {
        double limit = 1150.0 / 900;
        assertThat(Supplement4.wetService(BENDING, DF_2, Samples.factor("CF", limit), Moisture.WET)
                        .value())
                .isEqualTo(1.0);
        assertThat(Supplement4.wetService(BENDING, DF_2, Samples.factor("CF", limit * 1.0001), Moisture.WET)
                        .value())
                .isEqualTo(0.85);
        double compression = 750.0 / 1350;
        assertThat(Supplement4.wetService(COMPRESSION, DF_2, Samples.factor("CF", compression), Moisture.WET)
                        .value())
                .isEqualTo(1.0);
        assertThat(Supplement4.wetService(COMPRESSION, DF_2, Samples.factor("CF", compression * 1.0001), Moisture.WET)
                        .value())
                .isEqualTo(0.8);
    }

    @Test
    void wetBendingNeedsItsSizeFactor() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Supplement4.wetService(BENDING, DF_2, Moisture.WET))
                .withMessageContaining("size factor");
    }

    @Test
    void flatUseOfNarrowBoardsAndTimbers() {
        assertThat(flat(1.5, 2.5)).isEqualTo(1.0);
        assertThat(refusal(Supplement4.flatUse(DF_2, 3.5 * INCH, 2.5 * INCH))).contains("thick and narrow");
        assertThat(refusal(Supplement4.flatUse(DF_2, 5.5 * INCH, 7.5 * INCH))).contains("2 to 4 in");
        assertThat(refusal(Supplement4.flatUse(DF_TIMBER, 5.5 * INCH, 7.5 * INCH)))
                .contains("timbers");
        assertThat(Supplement4.onEdge())
                .extracting("value", "symbol")
                .containsExactly(1.0, one("Cfu").symbol());
    }

    private static double flat(double thickness, double width) {
        return value(Supplement4.flatUse(DF_2, thickness * INCH, width * INCH)).value();
    }

    private static double size(DesignValue value, WoodGrade grade, double breadth, double depth) {
        return value(Supplement4.size(value, grade, inches(breadth, depth))).value();
    }
}
