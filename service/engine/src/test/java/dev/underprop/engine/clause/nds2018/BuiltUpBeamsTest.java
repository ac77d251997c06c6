package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.INCH;
import static dev.underprop.engine.clause.nds2018.Samples.adjusted;
import static dev.underprop.engine.clause.nds2018.Samples.one;
import static dev.underprop.engine.clause.nds2018.Samples.southernPine;
import static dev.underprop.engine.clause.nds2018.Samples.twoBy;
import static dev.underprop.engine.clause.nds2018.Samples.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.section.BuiltUpSection;
import dev.underprop.engine.standard.Cited;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Built-up beams of No.2: figures computed from NDS 2018, 3.3, 3.4 and 4.3, with CD 1, dry, held, CF of one ply, Cr 1.15 from
 * three plies on. Rounded to 0.1 ft-lb, 0.1 lb and 1 lb-in².
 */
class BuiltUpBeamsTest {
    private static final double POUND = 4.4482216152605;

    @ParameterizedTest(name = "{0} {1}-2x{2}")
    @CsvSource({
        "DF, 2, 8, 2365.3, 2610.0, 152431250",
        "DF, 2, 10, 3529.5, 3330.0, 316581250",
        "DF, 2, 12, 4746.1, 4050.0, 569531250",
        "DF, 3, 8, 4080.2, 3915.0, 228646875",
        "DF, 3, 10, 6088.3, 4995.0, 474871875",
        "DF, 3, 12, 8187.0, 6075.0, 854296875",
        "DF, 4, 8, 5440.2, 5220.0, 304862500",
        "DF, 4, 10, 8117.7, 6660.0, 633162500",
        "DF, 4, 12, 10916.0, 8100.0, 1139062500",
        "HF, 2, 8, 2233.9, 2175.0, 123850391",
        "HF, 2, 10, 3333.4, 2775.0, 257222266",
        "HF, 2, 12, 4482.4, 3375.0, 462744141",
        "HF, 3, 8, 3853.5, 3262.5, 185775586",
        "HF, 3, 10, 5750.1, 4162.5, 385833398",
        "HF, 3, 12, 7732.2, 5062.5, 694116211",
        "HF, 4, 8, 5138.0, 4350.0, 247700781",
        "HF, 4, 10, 7666.8, 5550.0, 514444531",
        "HF, 4, 12, 10309.6, 6750.0, 925488281",
        "SPF, 2, 8, 2299.6, 1957.5, 133377344",
        "SPF, 2, 10, 3431.4, 2497.5, 277008594",
        "SPF, 2, 12, 4614.3, 3037.5, 498339844",
        "SPF, 3, 8, 3966.8, 2936.2, 200066016",
        "SPF, 3, 10, 5919.2, 3746.2, 415512891",
        "SPF, 3, 12, 7959.6, 4556.2, 747509766",
        "SPF, 4, 8, 5289.1, 3915.0, 266754688",
        "SPF, 4, 10, 7892.2, 4995.0, 554017188",
        "SPF, 4, 12, 10612.8, 6075.0, 996679688",
        "SP, 2, 8, 2025.8, 2537.5, 133377344",
        "SP, 2, 10, 2852.1, 3237.5, 277008594",
        "SP, 2, 12, 3955.1, 3937.5, 498339844",
        "SP, 3, 8, 3494.6, 3806.2, 200066016",
        "SP, 3, 10, 4919.8, 4856.2, 415512891",
        "SP, 3, 12, 6822.5, 5906.2, 747509766",
        "SP, 4, 8, 4659.4, 5075.0, 266754688",
        "SP, 4, 10, 6559.8, 6475.0, 554017188",
        "SP, 4, 12, 9096.7, 7875.0, 996679688"
    })
    void capacities(String species, int plies, int nominal, double footPounds, double pounds, double rigidity) {
        WoodGrade grade = grade(species, nominal);
        BuiltUpSection beam = new BuiltUpSection(twoBy(nominal), plies);

        double moment = bending(grade, beam).value() * beam.sectionModulus();
        double shear = 2.0 / 3.0 * shearValue(grade).value() * beam.area();
        double stiffness = modulus(grade).value() * beam.inertia();

        assertThat(moment / (POUND * 12 * INCH)).isCloseTo(footPounds, within(0.051));
        assertThat(shear / POUND).isCloseTo(pounds, within(0.051));
        assertThat(stiffness / (POUND * INCH * INCH)).isCloseTo(rigidity, within(0.51));
    }

    private static WoodGrade grade(String species, int nominal) {
        return switch (species) {
            case "DF" -> Samples.DF_2;
            case "HF" -> Samples.HF_2;
            case "SPF" -> Samples.SPF_2;
            default -> southernPine(nominal);
        };
    }

    private static Cited bending(WoodGrade grade, BuiltUpSection beam) {
        double thickness = beam.ply().breadth();
        return adjusted(
                DesignValue.BENDING,
                grade,
                Section2_3.loadDuration(LoadDuration.TEN_YEARS),
                one("CM"),
                one("Ct"),
                one("CL"),
                value(Supplement4.size(DesignValue.BENDING, grade, beam.ply())),
                Supplement4.onEdge(),
                one("Ci"),
                Section4_3.repetitive(beam.plies(), thickness, true, thickness));
    }

    private static Cited shearValue(WoodGrade grade) {
        return adjusted(DesignValue.SHEAR, grade, one("CD"), one("CM"), one("Ct"), one("Ci"));
    }

    private static Cited modulus(WoodGrade grade) {
        return adjusted(DesignValue.MODULUS, grade, one("CM"), one("Ct"), one("Ci"));
    }
}
