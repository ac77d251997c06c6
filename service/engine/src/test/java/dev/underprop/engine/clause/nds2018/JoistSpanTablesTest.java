package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.INCH;
import static dev.underprop.engine.clause.nds2018.Samples.adjusted;
import static dev.underprop.engine.clause.nds2018.Samples.one;
import static dev.underprop.engine.clause.nds2018.Samples.southernPine;
import static dev.underprop.engine.clause.nds2018.Samples.twoBy;
import static dev.underprop.engine.clause.nds2018.Samples.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.clause.irc2021.SectionR301_7;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Cited;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Joist spans of the International Residential Code, Tables R502.3.1(1) and (2), 2015 to 2021, No.2 (read in public
 * transcriptions): the lesser of bending under all load and L/360 under live load; shear and bearing do not govern. Printed
 * to the inch, and within 0.55 in of it because some entries are rounded down and some up; recomputed to 0.01 in.
 */
class JoistSpanTablesTest {
    private static final double PSF = 4.4482216152605 / (0.3048 * 0.3048);

    @ParameterizedTest(name = "{0} live {1} dead {2} psf 2x{3} at {4} in")
    @CsvSource({
        "SP, 30, 20, 6, 12, 129, 129.22",
        "SP, 30, 20, 6, 16, 112, 111.91",
        "SP, 30, 20, 6, 24, 91, 91.37",
        "SP, 30, 20, 8, 12, 164, 163.82",
        "SP, 30, 20, 8, 16, 142, 141.88",
        "SP, 30, 20, 8, 24, 116, 115.84",
        "SP, 30, 20, 10, 12, 194, 194.38",
        "SP, 30, 20, 10, 16, 168, 168.34",
        "SP, 30, 20, 10, 24, 137, 137.45",
        "SP, 30, 20, 12, 12, 229, 228.9",
        "SP, 30, 20, 12, 16, 198, 198.24",
        "SP, 30, 20, 12, 24, 162, 161.86",
        "DF, 30, 20, 6, 12, 140, 139.77",
        "DF, 30, 20, 6, 16, 121, 121.05",
        "DF, 30, 20, 6, 24, 99, 98.83",
        "DF, 30, 20, 8, 12, 177, 177.02",
        "DF, 30, 20, 8, 16, 153, 153.3",
        "DF, 30, 20, 8, 24, 125, 125.17",
        "DF, 30, 20, 10, 12, 216, 216.24",
        "DF, 30, 20, 10, 16, 187, 187.27",
        "DF, 30, 20, 10, 24, 153, 152.9",
        "DF, 30, 20, 12, 12, 251, 250.75",
        "DF, 30, 20, 12, 16, 217, 217.16",
        "DF, 30, 20, 12, 24, 177, 177.31",
        "DF, 40, 10, 6, 12, 129, 128.66",
        "DF, 40, 10, 6, 16, 117, 116.89",
        "DF, 40, 10, 6, 24, 99, 98.83",
        "DF, 40, 10, 8, 12, 170, 169.59",
        "DF, 40, 10, 8, 16, 153, 153.3",
        "DF, 40, 10, 8, 24, 125, 125.17",
        "DF, 40, 10, 10, 12, 216, 216.24",
        "DF, 40, 10, 10, 16, 187, 187.27",
        "DF, 40, 10, 10, 24, 153, 152.9",
        "DF, 40, 10, 12, 12, 251, 250.75",
        "DF, 40, 10, 12, 16, 217, 217.16",
        "DF, 40, 10, 12, 24, 177, 177.31",
        "HF, 40, 10, 6, 12, 120, 120.05",
        "HF, 40, 10, 6, 16, 109, 109.08",
        "HF, 40, 10, 6, 24, 95, 95.29",
        "HF, 40, 10, 8, 12, 158, 158.25",
        "HF, 40, 10, 8, 16, 144, 143.78",
        "HF, 40, 10, 8, 24, 122, 121.64",
        "HF, 40, 10, 10, 12, 202, 201.91",
        "HF, 40, 10, 10, 16, 182, 181.99",
        "HF, 40, 10, 10, 24, 149, 148.59",
        "HF, 40, 10, 12, 12, 244, 243.69",
        "HF, 40, 10, 12, 16, 211, 211.04",
        "HF, 40, 10, 12, 24, 172, 172.31",
        "SPF, 40, 10, 6, 12, 123, 123.06",
        "SPF, 40, 10, 8, 12, 162, 162.21",
        "SPF, 40, 10, 10, 12, 207, 206.96",
        "SPF, 40, 10, 12, 12, 247, 247.24",
        "SPF, 40, 10, 6, 16, 112, 111.8",
        "SPF, 40, 10, 8, 16, 147, 147.38",
        "SPF, 40, 10, 10, 16, 185, 184.65",
        "SPF, 40, 10, 12, 16, 214, 214.12",
        "SPF, 40, 10, 6, 19.2, 105, 105.21",
        "SPF, 40, 10, 8, 19.2, 138, 137.99",
        "SPF, 40, 10, 10, 19.2, 169, 168.56",
        "SPF, 40, 10, 12, 19.2, 195, 195.46",
        "SPF, 40, 10, 6, 24, 97, 97.45",
        "SPF, 40, 10, 8, 24, 123, 123.42",
        "SPF, 40, 10, 10, 24, 151, 150.76",
        "SPF, 40, 10, 12, 24, 175, 174.83",
        "SPF, 40, 20, 6, 12, 123, 123.06",
        "SPF, 40, 20, 8, 12, 159, 159.34",
        "SPF, 40, 20, 10, 12, 195, 194.64",
        "SPF, 40, 20, 12, 12, 226, 225.7",
        "SPF, 40, 20, 6, 16, 109, 108.96",
        "SPF, 40, 20, 8, 16, 138, 137.99",
        "SPF, 40, 20, 10, 16, 169, 168.56",
        "SPF, 40, 20, 12, 16, 195, 195.46",
        "SPF, 40, 20, 6, 19.2, 99, 99.46",
        "SPF, 40, 20, 8, 19.2, 126, 125.97",
        "SPF, 40, 20, 10, 19.2, 154, 153.87",
        "SPF, 40, 20, 12, 19.2, 178, 178.43",
        "SPF, 40, 20, 6, 24, 89, 88.96",
        "SPF, 40, 20, 8, 24, 113, 112.67",
        "SPF, 40, 20, 10, 24, 138, 137.63",
        "SPF, 40, 20, 12, 24, 160, 159.6"
    })
    void spans(
            String species, double live, double dead, int nominal, double spacing, double printed, double recomputed) {
        WoodGrade grade = grade(species, nominal);
        RectangularSection joist = twoBy(nominal);
        double strip = spacing * INCH * PSF;

        double strength = Math.sqrt(
                8 * bending(grade, joist, spacing).value() * joist.sectionModulus() / ((live + dead) * strip));
        double divisor = SectionR301_7.floors().value();
        double stiffness = StrictMath.cbrt(384 * grade.modulus() * joist.inertia() / (5 * live * strip * divisor));

        assertThat(Math.min(strength, stiffness) / INCH)
                .isCloseTo(printed, within(0.55))
                .isCloseTo(recomputed, within(0.0051));
    }

    private static WoodGrade grade(String species, int nominal) {
        return switch (species) {
            case "DF" -> Samples.DF_2;
            case "HF" -> Samples.HF_2;
            case "SPF" -> Samples.SPF_2;
            default -> southernPine(nominal);
        };
    }

    private static Cited bending(WoodGrade grade, RectangularSection joist, double spacing) {
        return adjusted(
                DesignValue.BENDING,
                grade,
                Section2_3.loadDuration(LoadDuration.TEN_YEARS),
                one("CM"),
                one("Ct"),
                value(Section3_3.stabilityWhenHeld(joist.breadth(), joist.depth(), true, true)),
                value(Supplement4.size(DesignValue.BENDING, grade, joist)),
                Supplement4.onEdge(),
                one("Ci"),
                Section4_3.repetitive(3, spacing * INCH, true, joist.breadth()));
    }
}
