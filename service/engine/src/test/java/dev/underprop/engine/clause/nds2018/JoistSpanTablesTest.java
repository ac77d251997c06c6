package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.INCH;
import static dev.underprop.engine.clause.nds2018.Samples.PSF;
import static dev.underprop.engine.clause.nds2018.Samples.adjusted;
import static dev.underprop.engine.clause.nds2018.Samples.agree;
import static dev.underprop.engine.clause.nds2018.Samples.nominal;
import static dev.underprop.engine.clause.nds2018.Samples.one;
import static dev.underprop.engine.clause.nds2018.Samples.rows;
import static dev.underprop.engine.clause.nds2018.Samples.twoBy;
import static dev.underprop.engine.clause.nds2018.Samples.value;

import dev.underprop.engine.clause.irc2021.SectionR301_7;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Cited;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The fixtures' joist span tables of the International Residential Code: the lesser of bending under all load and L/360
 * under live load; shear and bearing do not govern.
 */
class JoistSpanTablesTest {

    static Stream<Arguments> spans() {
        return rows("joist-span-table");
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("spans")
    void span(Case table, Expected row) {
        int nominal = nominal(row.given());
        double spacing = row.given().number("spacing_in") * INCH;
        double live = table.inputs().number("live_psf") * PSF * spacing;
        double dead = table.inputs().number("dead_psf") * PSF * spacing;
        RectangularSection joist = twoBy(nominal);
        WoodGrade grade = PublishedGrades.dimension(
                table.inputs().text("species"), table.inputs().text("grade"), nominal);

        double moment = bending(grade, joist, spacing).value() * joist.sectionModulus();
        double strength = Math.sqrt(8 * moment / (live + dead));
        double rigidity = grade.modulus() * joist.inertia();
        double stiffness = StrictMath.cbrt(
                384 * rigidity / (5 * live * SectionR301_7.floors().value()));

        agree(row, Math.min(strength, stiffness) / INCH);
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
                Section4_3.repetitive(3, spacing, true, joist.breadth()));
    }
}
