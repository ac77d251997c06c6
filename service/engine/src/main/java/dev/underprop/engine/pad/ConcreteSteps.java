package dev.underprop.engine.pad;

import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.aci318_19.Psi;
import dev.underprop.engine.clause.aci318_19.Section14_5;
import dev.underprop.engine.clause.aci318_19.Section19_2;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Outcome;

/** Tells strengths of plain concrete. The root of a strength is that of psi, and counts as psi. */
final class ConcreteSteps {

    private static final Citation LIGHT = Section19_2.lightweight(1).citation();

    private ConcreteSteps() {}

    /** Tells what all of them rest on. @param depth that counts (m) */
    static void tell(Outcome.Value depth, double strength, double lambda, Working working) {
        Cited flexure = Section14_5.flexure(strength, lambda);
        working.rule("inch", "one inch", Dimension.LENGTH, 0.0254, depth.cited().citation(), "");
        working.rule(
                "h", depth.cited(), "thickness that counts, 2 in less than there is", Dimension.LENGTH, "t - 2 × inch");
        working.plan("f'c", "strength of the concrete", Dimension.STRESS, strength);
        working.rule("psi", "unit of the root", Dimension.STRESS, Psi.PSI, flexure.citation(), "");
        working.rule(
                "rf", "root of f'c", Dimension.STRESS, Psi.root(strength), flexure.citation(), "root( f'c × psi )");
        working.rule(
                "λ", "factor for light concrete; 0.75 where weight is not stated", Dimension.NUMBER, lambda, LIGHT, "");
        working.rule(
                "φ", "strength reduction, plain concrete", Dimension.NUMBER, Section14_5.PHI, flexure.citation(), "");
    }

    /** Design stress in bending (Pa). */
    static double flexure(double strength, double lambda, Working working) {
        Cited flexure = Section14_5.flexure(strength, lambda);
        return working.rule("φft", flexure, "design stress in bending", Dimension.STRESS, "φ × 5 × λ × rf");
    }

    /** Design two-way shear (N). */
    static double twoWay(double strength, double lambda, double beta, double around, double depth, Working working) {
        working.step(
                "β",
                "long over short side of the loaded area",
                Dimension.NUMBER,
                beta,
                "max( l1 , l2 ) / min( l1 , l2 )");
        return working.rule(
                "φVn",
                Section14_5.twoWay(strength, lambda, beta, around, depth),
                "design two-way shear",
                Dimension.FORCE,
                "φ × min( ( 1 + 2 / β ) × 4 / 3 , 2.66 ) × λ × rf × bo × h");
    }
}
