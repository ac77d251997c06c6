package dev.underprop.engine.assess;

import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.aisc360_16.Appendix8;
import dev.underprop.engine.clause.aisc360_16.SectionE3;
import dev.underprop.engine.clause.aisc360_16.SectionH1;
import dev.underprop.engine.section.RoundTube;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Outcome;

/** Tells how the strength of a post of one round tube comes about. */
record TubeSteps(RoundTube tube, double yield, Working working) {

    /** E of steel, 29000 ksi (Pa). */
    private static final double MODULUS = 29e6 * 4.4482216152605 / (0.0254 * 0.0254);

    /**
     * Allowable axial load (N).
     *
     * @param height between the pins (m)
     * @param stress allowable (Pa)
     */
    double axial(double height, Cited stress) {
        working.plan("D", "outside diameter", Dimension.LENGTH, tube.diameter());
        working.plan("t", "wall", Dimension.LENGTH, tube.wall());
        working.plan("Fy", "yield stress", Dimension.STRESS, yield);
        working.plan("h", "height between the pins", Dimension.LENGTH, height);
        working.step("Di", "inside diameter", Dimension.LENGTH, tube.inside(), "D - 2 × t");
        working.step("A", "area", Dimension.AREA, tube.area(), "π / 4 × ( D^2 - Di^2 )");
        double radius =
                working.step("r", "radius of gyration", Dimension.LENGTH, tube.radius(), "root( D^2 + Di^2 ) / 4");
        double slender = working.step("λ", "slenderness, at most 200", Dimension.NUMBER, height / radius, "h / r");
        working.rule("E", "modulus of steel, 29000 ksi", Dimension.STRESS, MODULUS, stress.citation(), "");
        double euler = Math.PI * Math.PI * MODULUS / (slender * slender);
        working.rule("Fe", "elastic buckling stress", Dimension.STRESS, euler, stress.citation(), "π^2 × E / λ^2");
        String formula = yield / euler <= SectionE3.INELASTIC ? "0.658^( Fy / Fe ) × Fy / 1.67" : "0.877 × Fe / 1.67";
        working.rule("Fa", stress, "allowable axial stress", Dimension.STRESS, formula);
        return working.step("Pc", "allowable axial load", Dimension.FORCE, stress.value() * tube.area(), "Fa × A");
    }

    /** Allowable moment (N·m). */
    double moment(Outcome.Value moment) {
        working.step(
                "Z", "plastic section modulus", Dimension.SECTION_MODULUS, tube.plasticModulus(), "( D^3 - Di^3 ) / 6");
        return working.rule("Mc", moment, "allowable moment", Dimension.MOMENT, "Fy × Z / 1.67");
    }

    /** The load found (N), and that it uses the post up. */
    void used(double load, double axial, double moment, double euler, double eccentricity) {
        working.plan("e", "load off the middle", Dimension.LENGTH, eccentricity);
        working.analysis("Pa", "allowed: greatest load, searched, at which U is at most 1", Dimension.FORCE, load);
        double amplifier = working.rule(
                Appendix8.amplifier(load, euler), "amplifier", Dimension.NUMBER, "1 / ( 1 - 1.6 × Pa / Pe )");
        double bent = working.step(
                "Mr", "moment, amplified", Dimension.MOMENT, amplifier * load * eccentricity, "B1 × Pa × e");
        boolean much = load / axial >= SectionH1.MUCH;
        working.rule(
                "U",
                SectionH1.interaction(load / axial, bent / moment),
                "share used",
                Dimension.NUMBER,
                much ? "Pa / Pc + 8 / 9 × Mr / Mc" : "Pa / ( 2 × Pc ) + Mr / Mc");
    }
}
