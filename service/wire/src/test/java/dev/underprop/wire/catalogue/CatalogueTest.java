package dev.underprop.wire.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.clause.nds2018.DesignValue;
import dev.underprop.engine.clause.nds2018.Supplement4;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values as printed in the NDS Supplement, 2018 edition, Tables 1A, 4A and 4B, typed again from a copy. */
class CatalogueTest {
    private static final double INCH = 0.0254;
    private static final double PSI = 4.4482216152605 / (INCH * INCH);
    private static final Catalogue CATALOGUE = Catalogue.standard();

    @ParameterizedTest
    @CsvSource({
        // species, grade, Fb, Fv, Fcp, Fc, E, Emin: Table 4A
        "df-l, ss, 1500, 180, 625, 1700, 1900000, 690000",
        "df-l, no.1&btr, 1200, 180, 625, 1550, 1800000, 660000",
        "df-l, No.1, 1000, 180, 625, 1500, 1700000, 620000",
        "Douglas Fir-Larch, No.2, 900, 180, 625, 1350, 1600000, 580000",
        "df-l, #3, 525, 180, 625, 775, 1400000, 510000",
        "df-l, stud, 700, 180, 625, 850, 1400000, 510000",
        "hf, Select Structural, 1400, 150, 405, 1500, 1600000, 580000",
        "hem-fir, No.1 & Btr, 1100, 150, 405, 1350, 1500000, 550000",
        "hf, No. 1, 975, 150, 405, 1350, 1500000, 550000",
        "Hem-Fir, #2, 850, 150, 405, 1300, 1300000, 470000",
        "hf, No.3, 500, 150, 405, 725, 1200000, 440000",
        "hf, STUD, 675, 150, 405, 800, 1200000, 440000",
        "spf, SS, 1250, 135, 425, 1400, 1500000, 550000",
        "spf, No.1, 875, 135, 425, 1150, 1400000, 510000",
        "spruce-pine-fir, No.2, 875, 135, 425, 1150, 1400000, 510000",
        "spf, No.3, 500, 135, 425, 650, 1200000, 440000",
        "spf, Stud, 675, 135, 425, 725, 1200000, 440000"
    })
    void valuesOfTable4A(
            String species, String grade, double fb, double fv, double fcp, double fc, double e, double emin) {
        for (double depth : new double[] {3.5, 9.25, 13.25}) {
            WoodGrade values = values(species, grade, depth);
            assertValues(values, fb, fv, fcp, fc, e, emin);
            assertThat(values.citation().document()).isEqualTo("NDS Supplement");
        }
    }

    @ParameterizedTest
    @CsvSource({
        // grade, width (in, actual), Fb, Fc, E, Emin: Table 4B
        "No.1, 3.5, 1500, 1650, 1600000, 580000",
        "No.1, 5.5, 1350, 1550, 1600000, 580000",
        "No.1, 7.25, 1250, 1500, 1600000, 580000",
        "No.1, 9.25, 1050, 1450, 1600000, 580000",
        "No.1, 11.25, 1000, 1400, 1600000, 580000",
        "No.2, 3.5, 1100, 1450, 1400000, 510000",
        "No.2, 5.5, 1000, 1400, 1400000, 510000",
        "No.2, 7.25, 925, 1350, 1400000, 510000",
        "No.2, 9.25, 800, 1300, 1400000, 510000",
        "No.2, 11.25, 750, 1250, 1400000, 510000",
        "SS, 9.25, 1700, 1650, 1800000, 660000",
        "Stud, 3.5, 650, 850, 1300000, 470000",
        "No.3, 11.25, 450, 725, 1300000, 470000",
        // between two rows the row of the wider piece, whose values are lower
        "No.2, 4.5, 1000, 1400, 1400000, 510000",
        "No.2, 7.75, 800, 1300, 1400000, 510000",
        "No.2, 9.26, 750, 1250, 1400000, 510000",
        "No.2, 13.25, 750, 1250, 1400000, 510000"
    })
    void valuesOfTable4BDependOnTheWidth(String grade, double width, double fb, double fc, double e, double emin) {
        assertValues(values("southern pine", grade, width), fb, 175, 565, fc, e, emin);
    }

    @Test
    void southernPineWiderThanTheTableTakesNineTenths() {
        WoodGrade values = values("sp", "No.2", 13.25);
        Outcome size = Supplement4.size(DesignValue.BENDING, values, new RectangularSection(1.5 * INCH, 13.25 * INCH));
        assertThat(size)
                .isInstanceOfSatisfying(
                        Outcome.Value.class,
                        value -> assertThat(value.cited().value()).isEqualTo(0.9));
    }

    @Test
    void valuesFromMemorySaySo() {
        assertThat(values("sp", "SS", 9.25).citation().standing()).isEqualTo(Citation.Standing.FROM_MEMORY);
        assertThat(values("sp", "No.2", 9.25).citation().standing()).isEqualTo(Citation.Standing.READ);
    }

    @ParameterizedTest
    @CsvSource({
        "2x4, 1.5, 3.5",
        "2 x 6, 1.5, 5.5",
        "2X8, 1.5, 7.25",
        "2x10, 1.5, 9.25",
        "2x12, 1.5, 11.25",
        "3x8, 2.5, 7.25",
        "4x4, 3.5, 3.5",
        "4x6, 3.5, 5.5",
        "4x12, 3.5, 11.25"
    })
    void dressedSizes(String size, double breadth, double depth) {
        DressedSize found = CATALOGUE.size(size).orElseThrow();
        assertThat(found.breadth()).isCloseTo(breadth * INCH, within(1e-12));
        assertThat(found.depth()).isCloseTo(depth * INCH, within(1e-12));
    }

    @Test
    void whatIsNotSourcedIsNotThere() {
        assertThat(CATALOGUE.size("2x14")).isEmpty();
        assertThat(CATALOGUE.size("6x6")).isEmpty();
        assertThat(CATALOGUE.species("oak")).isEmpty();
        assertThat(CATALOGUE.grade("No.4")).isEmpty();
        assertThat(CATALOGUE.gradesOf(CATALOGUE.species("spf").orElseThrow()))
                .containsExactly("Select Structural", "No.1", "No.2", "No.3", "Stud");
    }

    /** 62.4 (0.50 / (1 + 0.50 · 0.009 · 19)) 1.19 = 34.20 pcf, by hand. */
    @Test
    void timberWeighsByItsGravityAndMoisture() {
        double pcf = 4.4482216152605 / (0.3048 * 0.3048 * 0.3048);
        assertThat(CATALOGUE.species("df-l").orElseThrow().unitWeight() / pcf).isCloseTo(34.20, within(0.005));
    }

    @Test
    void theDigestIsThatOfTheTables() {
        assertThat(CATALOGUE.digest()).matches("[0-9a-f]{64}");
    }

    private static WoodGrade values(String species, String grade, double width) {
        Species of = CATALOGUE.species(species).orElseThrow();
        return CATALOGUE
                .values(of, CATALOGUE.grade(grade).orElseThrow(), width * INCH)
                .orElseThrow();
    }

    private static void assertValues(
            WoodGrade values, double fb, double fv, double fcp, double fc, double e, double emin) {
        assertThat(values.bending() / PSI).isCloseTo(fb, within(1e-6));
        assertThat(values.shear() / PSI).isCloseTo(fv, within(1e-6));
        assertThat(values.bearing() / PSI).isCloseTo(fcp, within(1e-6));
        assertThat(values.compression() / PSI).isCloseTo(fc, within(1e-6));
        assertThat(values.modulus() / PSI).isCloseTo(e, within(1e-3));
        assertThat(values.modulusMin() / PSI).isCloseTo(emin, within(1e-3));
    }
}
