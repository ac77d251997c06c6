package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.DF_2;
import static dev.underprop.engine.clause.nds2018.Samples.DF_STUD;
import static dev.underprop.engine.clause.nds2018.Samples.INCH;
import static dev.underprop.engine.clause.nds2018.Samples.agree;
import static dev.underprop.engine.clause.nds2018.Samples.dressedThickness;
import static dev.underprop.engine.clause.nds2018.Samples.dressedWidth;
import static dev.underprop.engine.clause.nds2018.Samples.rows;
import static dev.underprop.engine.clause.nds2018.Samples.value;

import dev.underprop.engine.material.Moisture;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Inputs;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The fixtures' tables of factors, row by row, at dressed sizes. */
class SupplementTablesTest {

    static Stream<Arguments> sizes() {
        return rows("size-factor");
    }

    static Stream<Arguments> flatUses() {
        return rows("flat-use");
    }

    static Stream<Arguments> temperatures() {
        return rows("temperature");
    }

    static Stream<Arguments> bearings() {
        return rows("bearing-area");
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("sizes")
    void size(Case table, Expected row) {
        WoodGrade grade = table.inputs().texts("grades").contains("Stud") ? DF_STUD : DF_2;
        Inputs given = row.given();
        double thickness = given.has("nominalThickness_in") ? given.number("nominalThickness_in") : 2;
        RectangularSection ply =
                Samples.inches(dressedThickness(thickness), dressedWidth(given.number("nominalWidth_in")));

        agree(row, value(Supplement4.size(designValue(row), grade, ply)).value());
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("flatUses")
    void flatUse(Case table, Expected row) {
        double thickness = dressedThickness(row.given().number("nominalThickness_in")) * INCH;
        double width = dressedWidth(row.given().number("nominalWidth_in")) * INCH;

        agree(row, value(Supplement4.flatUse(DF_2, thickness, width)).value());
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("temperatures")
    void temperature(Case table, Expected row) {
        Temperature temperature = switch (row.given().text("temperature")) {
            case "up to 100 F" -> Temperature.ORDINARY;
            case "100 F to 125 F" -> Temperature.WARM;
            case "125 F to 150 F" -> Temperature.HOT;
            default -> throw new IllegalArgumentException("unknown column " + row);
        };
        Moisture moisture = row.given().text("moisture").equals("wet") ? Moisture.WET : Moisture.DRY;

        agree(
                row,
                Section2_3.temperature(designValue(row), temperature, moisture).value());
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("bearings")
    void bearingArea(Case table, Expected row) {
        double toEnd = table.inputs().number("leastDistanceToEnd_in") * INCH;

        agree(
                row,
                Section3_10.areaFactor(row.given().number("bearingLength_in") * INCH, toEnd)
                        .value());
    }

    private static DesignValue designValue(Expected row) {
        String name = row.name().substring(row.name().indexOf('.') + 1);
        return switch (name) {
            case "Fb" -> DesignValue.BENDING;
            case "Ft" -> DesignValue.TENSION;
            case "Fv" -> DesignValue.SHEAR;
            case "Fc" -> DesignValue.COMPRESSION;
            case "Fc_perp" -> DesignValue.BEARING;
            case "E" -> DesignValue.MODULUS;
            default -> throw new IllegalArgumentException("unknown design value " + row);
        };
    }
}
