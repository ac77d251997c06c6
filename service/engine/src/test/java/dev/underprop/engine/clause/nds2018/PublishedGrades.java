package dev.underprop.engine.clause.nds2018;

import static dev.underprop.engine.clause.nds2018.Samples.PSI;

import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.material.WoodGrade.Sizes;
import dev.underprop.engine.standard.Citation;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Fixtures;

/** Dimension lumber as the fixtures give it, by species, grade and nominal width. */
final class PublishedGrades {

    private PublishedGrades() {}

    static WoodGrade dimension(String species, String grade, int nominal) {
        boolean southern = species.equals("SP");
        String table = southern ? "4B" : "4A";
        Case found = Fixtures.ofKind("lumber-values").stream()
                .filter(c -> c.inputs().text("table").equals(table)
                        && c.inputs().text("species").equals(species)
                        && c.inputs().text("grade").equals(grade))
                .findFirst()
                .orElseThrow();
        return new WoodGrade(
                species,
                grade,
                pascal(found, "Fb", nominal),
                pascal(found, "Ft", nominal),
                pascal(found, "Fv", nominal),
                pascal(found, "Fc_perp", nominal),
                pascal(found, "Fc", nominal),
                pascal(found, "E", nominal),
                pascal(found, "Emin", nominal),
                0.5,
                southern ? Sizes.SOUTHERN_PINE : Sizes.WESTERN_DIMENSION,
                Citation.read("NDS Supplement", "2018", "Table " + table));
    }

    private static double pascal(Case grade, String name, int nominal) {
        Expected value = grade.expected().stream()
                .filter(e -> e.name().equals(name))
                .filter(e -> !e.given().has("nominalWidth_in") || e.given().number("nominalWidth_in") == nominal)
                .findFirst()
                .orElseThrow();
        return value.printed().doubleValue() * PSI;
    }
}
