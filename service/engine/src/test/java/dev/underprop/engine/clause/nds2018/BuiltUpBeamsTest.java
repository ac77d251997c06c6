package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.INCH;
import static dev.underprop.engine.clause.nds2018.Samples.POUND;
import static dev.underprop.engine.clause.nds2018.Samples.adjusted;
import static dev.underprop.engine.clause.nds2018.Samples.agree;
import static dev.underprop.engine.clause.nds2018.Samples.nominal;
import static dev.underprop.engine.clause.nds2018.Samples.one;
import static dev.underprop.engine.clause.nds2018.Samples.rows;
import static dev.underprop.engine.clause.nds2018.Samples.twoBy;
import static dev.underprop.engine.clause.nds2018.Samples.value;

import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.section.BuiltUpSection;
import dev.underprop.engine.standard.Cited;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The fixtures' built-up beams: dry, held, size factor of one ply, Cr of 1.15 from three plies on. */
class BuiltUpBeamsTest {

    static Stream<Arguments> beams() {
        return rows("built-up-beam");
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("beams")
    void capacity(Case table, Expected row) {
        int nominal = nominal(row.given());
        WoodGrade grade = PublishedGrades.dimension(
                row.given().text("species"), table.inputs().text("grade"), nominal);
        BuiltUpSection beam =
                new BuiltUpSection(twoBy(nominal), (int) row.given().number("plies"));

        agree(row, capacity(row.name(), grade, beam));
    }

    private static double capacity(String name, WoodGrade grade, BuiltUpSection beam) {
        return switch (name) {
            case "momentAllowable" -> bending(grade, beam).value() * beam.sectionModulus() / (POUND * 12 * INCH);
            case "shearAllowable" -> 2.0 / 3.0 * shear(grade).value() * beam.area() / POUND;
            case "EI" -> modulus(grade).value() * beam.inertia() / (POUND * INCH * INCH);
            default -> throw new IllegalArgumentException("unknown number " + name);
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

    private static Cited shear(WoodGrade grade) {
        return adjusted(DesignValue.SHEAR, grade, one("CD"), one("CM"), one("Ct"), one("Ci"));
    }

    private static Cited modulus(WoodGrade grade) {
        return adjusted(DesignValue.MODULUS, grade, one("CM"), one("Ct"), one("Ci"));
    }
}
