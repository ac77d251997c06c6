package dev.underprop.engine.assess;

import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.nds2018.Grain;
import dev.underprop.engine.clause.nds2018.LagSize;
import dev.underprop.engine.clause.nds2018.Section11_3;
import dev.underprop.engine.clause.nds2018.Section12_3;
import dev.underprop.engine.material.WoodGrade;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;
import java.util.List;

/** Tells what lag screws hold sideways. */
record LagSteps(LagSize size, Grain grain, Working working) {

    private static final double INCH = 0.0254;
    private static final double PSI = 4.4482216152605 / (INCH * INCH);

    private static final List<String> FORMULAS = List.of(
            "Dr × lm × Fem",
            "Dr × ls × Fes",
            "( root( Re + 2 × Re^2 × ( 1 + Rt + Rt^2 ) + Rt^2 × Re^3 ) - Re × ( 1 + Rt ) ) / ( 1 + Re ) × Dr × ls × Fes",
            "( root( 2 × ( 1 + Re ) + 2 × Fyb × ( 1 + 2 × Re ) × Dr^2 / ( 3 × Fem × lm^2 ) ) - 1 )"
                    + " × Dr × lm × Fem / ( 1 + 2 × Re )",
            "( root( 2 × ( 1 + Re ) / Re + 2 × Fyb × ( 2 + Re ) × Dr^2 / ( 3 × Fem × ls^2 ) ) - 1 )"
                    + " × Dr × ls × Fem / ( 2 + Re )",
            "Dr^2 × root( 2 × Fem × Fyb / ( 3 × ( 1 + Re ) ) )");

    /**
     * Z of one screw (N).
     *
     * @param wood of the beam
     * @param length in the wood (m)
     * @param plate thickness (m)
     */
    double one(WoodGrade wood, double length, double plate) {
        Cited bearing = Section12_3.wood(grain, wood.gravity(), size.diameter());
        boolean along = grain == Grain.PARALLEL;
        working.plan("D", "diameter of a lag screw", Dimension.LENGTH, size.diameter());
        working.rule(size.root(), "its root", Dimension.LENGTH, "");
        double yield = working.rule(size.yield(), "bending yield strength", Dimension.STRESS, "");
        working.rule(
                "G", "specific gravity of " + wood.species(), Dimension.NUMBER, wood.gravity(), wood.citation(), "");
        working.rule("psi", "unit of the rules", Dimension.STRESS, PSI, bearing.citation(), "");
        working.rule("inch", "unit of the rules", Dimension.LENGTH, INCH, bearing.citation(), "");
        String formula = along ? "11200 × G × psi" : "6100 × G^1.45 / root( D / inch ) × psi";
        double main = working.rule(bearing, "bearing of the wood " + way(), Dimension.STRESS, formula);
        double side = working.rule(Section12_3.steel(), "bearing of the steel plate", Dimension.STRESS, "");
        working.plan("lm", "length in the wood", Dimension.LENGTH, length);
        working.plan("ls", "thickness of the plate", Dimension.LENGTH, plate);
        working.step("Re", "their bearing, wood to steel", Dimension.NUMBER, main / side, "Fem / Fes");
        working.step("Rt", "their length, wood to steel", Dimension.NUMBER, length / plate, "lm / ls");
        List<Cited> modes = Section12_3.modes(size, grain, wood.gravity(), length, plate);
        for (int i = 0; i < modes.size(); i++) {
            working.rule(modes.get(i), "yield mode, not reduced", Dimension.FORCE, FORMULAS.get(i));
        }
        working.rule(Section12_3.angle(grain), "force " + way(), Dimension.NUMBER, "");
        return working.rule(
                Section12_3.lateral(size, grain, wood.gravity(), length, plate),
                "reference value of one screw",
                Dimension.FORCE,
                reduced());
    }

    private String way() {
        return grain == Grain.PARALLEL ? "along the grain" : "across the grain";
    }

    private String reduced() {
        if (Section12_3.isThin(size)) {
            working.rule(Section12_3.reduction(size), "reduction of a thin root", Dimension.NUMBER, "");
            return "min( Im , Is , II , IIIm , IIIs , IV ) / KD / Kθ";
        }
        return "min( Im / 4 , Is / 4 , II / 3.6 , IIIm / 3.2 , IIIs / 3.2 , IV / 3.2 ) / Kθ";
    }

    /** CΔ. @param distance to the end (m) */
    double end(Cited factor, double distance) {
        working.plan("z", "distance to the end", Dimension.LENGTH, distance);
        String whole = grain == Grain.PARALLEL ? "7" : "4";
        return working.rule(factor, "end distance factor", Dimension.NUMBER, "min( 1 , z / ( " + whole + " × D ) )");
    }

    /** Cg of a single screw. */
    double single() {
        working.plan("n", "lag screws", Dimension.NUMBER, 1);
        return working.rule(Section11_3.groupAction(1, 1, 1, 1, 1), "a single screw", Dimension.NUMBER, "");
    }

    /**
     * Cg of several.
     *
     * @param apart distance in the row (m)
     * @param wood E·A of the timber (N)
     * @param steel E·A of the plate (N)
     */
    double group(Cited factor, int count, double apart, double wood, double steel) {
        working.plan("n", "lag screws, counted as one row", Dimension.NUMBER, count);
        working.plan("s", "their distance in it", Dimension.LENGTH, apart);
        working.plan("EAm", "modulus times area of the timber that counts", Dimension.FORCE, wood);
        working.plan("EAs", "modulus times area of the plate", Dimension.FORCE, steel);
        double slip = 270_000 * StrictMath.pow(size.diameter() / INCH, 1.5) * PSI * INCH;
        working.rule(
                "γ",
                "slip of one screw",
                Dimension.LINE_LOAD,
                slip,
                factor.citation(),
                "270000 × ( D / inch )^1.5 × psi × inch");
        double x = slip * apart / 2 * (1 / wood + 1 / steel);
        working.rule("x", "u - 1", Dimension.NUMBER, x, factor.citation(), "γ × s / 2 × ( 1 / EAm + 1 / EAs )");
        double m = 1 + x - Math.sqrt(2 * x + x * x);
        working.rule(
                "m", "u less root of u² - 1", Dimension.NUMBER, m, factor.citation(), "1 + x - root( 2 × x + x^2 )");
        double ratio = Math.min(wood / steel, steel / wood);
        working.step("REA", "lesser over greater", Dimension.NUMBER, ratio, "min( EAm / EAs , EAs / EAm )");
        return working.rule(
                factor,
                "group action factor",
                Dimension.NUMBER,
                "m × ( 1 - m^( 2 × n ) ) / ( n × ( ( 1 + REA × m^n ) × ( 1 + m ) - 1 + m^( 2 × n ) ) )"
                        + " × ( 1 + REA ) / ( 1 - m )");
    }
}
