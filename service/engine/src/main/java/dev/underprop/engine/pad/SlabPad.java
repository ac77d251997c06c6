package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.aci318_19.Section14_3;
import dev.underprop.engine.clause.aci318_19.Section19_2;
import dev.underprop.engine.clause.westergaard.Slab;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Outcome;
import java.util.List;

/**
 * A plain slab on the ground under a post's base plate: stress by Westergaard on the softest ground of its range against the
 * design stress of plain concrete, and two-way shear with the whole load. A slab that carries a post is structural. What other
 * posts on it add is not worked out: one that would pass is not checked where another stands near.
 */
final class SlabPad {

    /** Another post nearer than so many radii of relative stiffness adds to the stress: common practice, no source. */
    private static final double BESIDE = 3;

    private SlabPad() {}

    /**
     * What acts on a slab.
     *
     * @param factored greatest load of the strength combinations (N)
     * @param nearest distance to the nearest other post that stands on a slab (m), infinite where there is none
     */
    record Demand(double factored, double nearest) {}

    static Finding judge(Pad pad, Pad.SlabPart slab, Ground ground, Plate base, Demand demand, Working working) {
        if (slab.measured().isBlank()) {
            return new CheckResult.NotChecked(
                    "how the thickness of the slab was measured is not stated (declare: thicknessMeasured)");
        }
        if (Double.isNaN(slab.strength())) {
            return new CheckResult.NotChecked("the strength of the slab's concrete is not given (declare: strength)");
        }
        if (slab.stands() == Pad.Stands.UNSTATED) {
            return new CheckResult.NotChecked(
                    "whether the post stands within the slab, at an edge or joint, or in a corner is not stated (declare: stands)");
        }
        if (!GroundStiffness.known(ground)) {
            return new CheckResult.NotChecked(
                    "how far the ground under the slab gives is not known (declare: subgrade)");
        }
        if (Double.isNaN(demand.factored())) {
            return PadStrength.unfactored();
        }
        Subgrade k = Subgrade.of(ground);
        Finding alone = strong(pad, slab, k, base, demand.factored(), working);
        boolean passes = alone instanceof Judged judged && judged.demand() <= judged.capacity();
        return passes && demand.nearest() < BESIDE * stiffnessRadius(pad, slab, k)
                ? new CheckResult.NotChecked(
                        "another post stands on a slab within three radii of relative stiffness and adds to the stress, which"
                                + " is not worked out")
                : alone;
    }

    /** On the soft bound, which is the longest (m). Asked for only where the slab's rules hold. */
    private static double stiffnessRadius(Pad pad, Pad.SlabPart slab, Subgrade k) {
        double h = ((Outcome.Value) Section14_3.onSoil(pad.thickness())).cited().value();
        double modulus = Section19_2.modulus(slab.strength()).value();
        return new Slab(h, modulus, k.soft()).stiffnessRadius().value();
    }

    private static Finding strong(
            Pad pad, Pad.SlabPart slab, Subgrade k, Plate base, double factored, Working working) {
        working.analysis("Pu", "greatest load, strength combinations", Dimension.FORCE, factored);
        Outcome specified = Section19_2.strength(slab.strength());
        Outcome depth = Section14_3.onSoil(pad.thickness());
        for (Outcome outcome : new Outcome[] {specified, depth}) {
            if (outcome instanceof Outcome.Refused refused) {
                return refused(factored, refused.reason(), working);
            }
        }
        double h = ((Outcome.Value) depth).cited().value();
        double x = CastPad.loaded(base.along());
        double y = CastPad.loaded(base.across());
        double radius = Math.sqrt(x * y / StrictMath.PI);
        double modulus = Section19_2.modulus(slab.strength()).value();
        if (Double.isInfinite(k.stiff()) || pad.area() > new Slab(h, modulus, k.stiff()).spread(where(slab.stands()))) {
            return refused(factored, "the slab does not spread the load as far as the size given for the pad", working);
        }
        Slab plate = new Slab(h, modulus, k.soft());
        if (!plate.holdsFor(radius)) {
            return refused(factored, "the base plate is too large against the stiffness of the slab", working);
        }
        double lambda = CastPad.lambda(pad);
        working.plan("t", "thickness of the slab", Dimension.LENGTH, pad.thickness());
        ConcreteSteps.tell((Outcome.Value) depth, slab.strength(), lambda, working);
        new SlabSteps(plate, k, base, radius, working).tell(slab.strength());
        return Worst.told(
                working,
                List.of(
                        w -> new SlabSteps(plate, k, base, radius, w)
                                .bending(slab.stands(), factored, slab.strength(), lambda),
                        w -> shear(slab, new double[] {x, y, h}, lambda, factored, w)));
    }

    private static Judged shear(Pad.SlabPart slab, double[] sizes, double lambda, double factored, Working working) {
        double x = sizes[0];
        double y = sizes[1];
        double h = sizes[2];
        double around = around(slab.stands(), x, y, h);
        working.step("bo", "perimeter half a depth from it", Dimension.LENGTH, around, perimeter(slab.stands()));
        double beta = Math.max(x, y) / Math.min(x, y);
        double shear = ConcreteSteps.twoWay(slab.strength(), lambda, beta, around, h, working);
        return Worst.compared(working, "Pu", "φVn", new Judged(Measure.FORCE, factored, shear));
    }

    private static String perimeter(Pad.Stands stands) {
        return switch (stands) {
            case INTERIOR -> "2 × ( l1 + l2 ) + 4 × h";
            case EDGE -> "l1 + l2 + min( l1 , l2 ) + 2 × h";
            case CORNER, UNSTATED -> "l1 + l2 + h";
        };
    }

    private static Finding refused(double factored, String reason, Working working) {
        return working.compared("Pu", "", new CheckResult.Refused(Measure.FORCE, factored, reason));
    }

    private static Slab.Place where(Pad.Stands stands) {
        return switch (stands) {
            case INTERIOR -> Slab.Place.INTERIOR;
            case EDGE -> Slab.Place.EDGE;
            case CORNER, UNSTATED -> Slab.Place.CORNER;
        };
    }

    /** Perimeter half a depth from the loaded area (m), where the slab ends at the loaded area's side. */
    private static double around(Pad.Stands stands, double x, double y, double h) {
        return switch (stands) {
            case INTERIOR -> 2 * (x + y) + 4 * h;
            case EDGE -> x + y + Math.min(x, y) + 2 * h;
            case CORNER, UNSTATED -> x + y + h;
        };
    }
}
