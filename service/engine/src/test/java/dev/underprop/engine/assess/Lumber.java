package dev.underprop.engine.assess;

import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.section.RectangularSection;
import dev.underprop.engine.standard.Citation;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Fixtures;
import java.util.Map;

/** Members of published lumber, values read from the fixtures. */
final class Lumber {

    private static final Map<String, Double> GRAVITY = Map.of("DF-L", 0.5, "HF", 0.43, "SPF", 0.42, "SP", 0.55);

    private Lumber() {}

    /** A member without weight of its own, so that only the tabulated loads act. */
    static Member member(String species, String grade, String size, int plies) {
        int nominal = Integer.parseInt(size.substring(size.indexOf('x') + 1));
        double depth = (nominal > 6 ? nominal - 0.75 : nominal - 0.5) * Plans.INCH;
        RectangularSection ply = new RectangularSection(1.5 * Plans.INCH, depth);
        return new Member(size, ply, plies, grade(species, grade, nominal), true, Member.Moisture.DRY, 0);
    }

    static WoodGrade grade(String species, String grade, int nominal) {
        Case values = Fixtures.ofKind("lumber-values").stream()
                .filter(c -> c.inputs().text("table").matches("4A|4B"))
                .filter(c -> c.inputs().text("species").equals(species)
                        && c.inputs().text("grade").equals(grade))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no values for " + species + " " + grade));
        boolean southern = species.equals("SP");
        return new WoodGrade(
                species,
                grade,
                psi(values, "Fb", nominal),
                psi(values, "Ft", nominal),
                psi(values, "Fv", nominal),
                psi(values, "Fc_perp", nominal),
                psi(values, "Fc", nominal),
                psi(values, "E", nominal),
                psi(values, "Emin", nominal),
                GRAVITY.get(species),
                southern ? WoodGrade.Sizes.SOUTHERN_PINE : WoodGrade.Sizes.WESTERN_DIMENSION,
                Citation.read("NDS Supplement", "2018", southern ? "Table 4B" : "Table 4A"));
    }

    private static double psi(Case values, String name, int nominal) {
        return values.expected().stream()
                        .filter(e -> e.name().equals(name) && fits(e, nominal))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException(values + " has no " + name + " for " + nominal))
                        .printed()
                        .doubleValue()
                * Plans.PSI;
    }

    private static boolean fits(Expected value, int nominal) {
        return !value.given().has("nominalWidth_in") || value.given().number("nominalWidth_in") == nominal;
    }
}
