package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.aci318_19.Section13_2;
import dev.underprop.engine.clause.aci318_19.Section19_2;
import dev.underprop.engine.clause.westergaard.Slab;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;
import dev.underprop.engine.standard.Dimension;

/**
 * Bending of a slab on the ground, told step by step.
 *
 * @param slab on the softest ground of its range
 * @param ground its range
 * @param base plate
 * @param radius of the loaded circle (m)
 */
record SlabSteps(Slab slab, Subgrade ground, Plate base, double radius, Working working) {

    /** Tells the loaded circle and the radius of relative stiffness. */
    void tell(double strength) {
        Citation halfway = Section13_2.underPlate(1, 0).citation();
        working.plan("p1", "base plate along the beam", Dimension.LENGTH, base.along());
        working.plan("p2", "base plate across the beam", Dimension.LENGTH, base.across());
        working.rule(
                "l1",
                "between the critical sections",
                Dimension.LENGTH,
                CastPad.loaded(base.along()),
                halfway,
                "p1 / 2");
        working.rule("l2", "the same across it", Dimension.LENGTH, CastPad.loaded(base.across()), halfway, "p2 / 2");
        working.step("a", "radius of a circle as large", Dimension.LENGTH, radius, "root( l1 × l2 / π )");
        working.rule(Section19_2.modulus(strength), "modulus of the concrete", Dimension.STRESS, "57000 × rf");
        working.rule("k", "ground, soft end of its range", Dimension.PER_VOLUME, ground.soft(), ground.citation(), "");
        Cited stiff = slab.stiffnessRadius();
        working.rule(
                "l",
                stiff,
                "radius of relative stiffness",
                Dimension.LENGTH,
                "( Ec × h^3 / ( 12 × ( 1 - 0.15^2 ) × k ) )^0.25");
    }

    /** Stress (Pa) where the post stands against the design stress. */
    Judged bending(Pad.Stands stands, double load, double strength, double lambda) {
        Cited stress = stress(stands, load);
        double met = working.rule("σ", stress, "greatest tension", Dimension.STRESS, formula(stands));
        double allowed = ConcreteSteps.flexure(strength, lambda, working);
        return Worst.compared(working, "σ", "φft", new Judged(Measure.STRESS, met, allowed));
    }

    private Cited stress(Pad.Stands stands, double load) {
        if (stands == Pad.Stands.INTERIOR) {
            Cited b = slab.resistingRadius(radius);
            String told = radius >= 1.724 * slab.thickness() ? "a" : "root( 1.6 × a^2 + h^2 ) - 0.675 × h";
            working.rule(b, "radius that resists", Dimension.LENGTH, told);
            return slab.interior(load, radius);
        }
        return stands == Pad.Stands.EDGE ? slab.edge(load, radius) : slab.corner(load, radius);
    }

    private static String formula(Pad.Stands stands) {
        return switch (stands) {
            case INTERIOR -> "0.316 × Pu / h^2 × ( 4 × log( l / b ) + 1.069 )";
            case EDGE -> "0.803 × Pu / h^2 × ( 4 × log( l / a ) + 0.666 × a / l - 0.034 )";
            case CORNER, UNSTATED -> "3 × Pu / h^2 × ( 1 - ( 1.772 × a / l )^0.72 )";
        };
    }
}
