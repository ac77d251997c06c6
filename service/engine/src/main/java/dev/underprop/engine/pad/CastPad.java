package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.aci318_19.Section13_2;
import dev.underprop.engine.clause.aci318_19.Section14_3;
import dev.underprop.engine.clause.aci318_19.Section14_5;
import dev.underprop.engine.clause.aci318_19.Section19_2;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Outcome;
import java.util.List;

/**
 * A pad of plain concrete cast on the ground, ACI 318-19 chapter 14: bending, one-way and two-way shear under factored load.
 * The pressure of the worst corner is taken under the whole pad; the pad's own weight bends nothing.
 */
final class CastPad {

    private CastPad() {}

    /**
     * What presses on a pad.
     *
     * @param factored greatest load of the strength combinations (N), NaN where it is not known
     * @param off how far off the middle it may stand (m)
     */
    record Demand(double factored, double off) {}

    static Finding judge(Pad pad, double strength, Plate base, Demand demand, Working working) {
        if (Double.isNaN(strength)) {
            return new CheckResult.NotChecked(
                    "the strength of the concrete of pad " + pad.name() + " is not stated (declare: strength)");
        }
        double factored = demand.factored();
        if (Double.isNaN(factored)) {
            return PadStrength.unfactored();
        }
        working.analysis("Pu", "greatest load, strength combinations", Dimension.FORCE, factored);
        Outcome specified = Section19_2.strength(strength);
        Outcome depth = Section14_3.footing(pad.thickness());
        Outcome uneven = OffCentre.factor(pad, demand.off(), "e", working);
        for (Outcome outcome : new Outcome[] {specified, depth, uneven}) {
            if (outcome instanceof Outcome.Refused refused) {
                return working.compared("Pu", "", new CheckResult.Refused(Measure.FORCE, factored, refused.reason()));
            }
        }
        double pressure = working.step(
                "q",
                "pressure of the worst corner, taken all over",
                Dimension.STRESS,
                factored / pad.area() * value(uneven),
                "Pu / ( B × L ) × m");
        ConcreteSteps.tell((Outcome.Value) depth, strength, lambda(pad), working);
        Sides sides = new Sides(pad, base, value(depth), pressure);
        return Worst.told(
                working,
                List.of(
                        w -> bending(sides.along(w), strength, lambda(pad), w),
                        w -> bending(sides.across(w), strength, lambda(pad), w),
                        w -> oneWay(sides.along(w), strength, lambda(pad), w),
                        w -> oneWay(sides.across(w), strength, lambda(pad), w),
                        w -> twoWay(sides.along(w), strength, lambda(pad), w)));
    }

    /** As if the pad reached as far on every side as on the long side of a post off its middle. */
    private record Sides(Pad pad, Plate base, double depth, double pressure) {

        Footing along(Working working) {
            return footing(pad.along(), pad.across(), base.along(), base.across(), "B", "L", working);
        }

        Footing across(Working working) {
            return footing(pad.across(), pad.along(), base.across(), base.along(), "L", "B", working);
        }

        private Footing footing(
                double size, double other, double plate, double turned, String one, String two, Working working) {
            double more = 2 * PadStrength.aside(pad);
            working.plan("p1", "base plate in the same direction", Dimension.LENGTH, plate);
            working.plan("p2", "base plate across it", Dimension.LENGTH, turned);
            working.step("B1", "pad with the post off its middle", Dimension.LENGTH, size + more, one + " + 2 × c");
            working.step("B2", "the same across it", Dimension.LENGTH, other + more, two + " + 2 × c");
            Citation halfway = Section13_2.underPlate(plate, 0).citation();
            working.rule("l1", "between the critical sections", Dimension.LENGTH, loaded(plate), halfway, "p1 / 2");
            working.rule("l2", "the same across it", Dimension.LENGTH, loaded(turned), halfway, "p2 / 2");
            return new Footing(size + more, other + more, depth, loaded(plate), loaded(turned), pressure);
        }
    }

    private static double value(Outcome outcome) {
        return ((Outcome.Value) outcome).cited().value();
    }

    /** Between the critical sections. The column's size is not taken as known, which is on the safe side. */
    static double loaded(double plate) {
        return Section13_2.underPlate(plate, 0).value();
    }

    /** Factor for lightweight concrete; the least where the plan does not state the weight. */
    static double lambda(Pad pad) {
        return pad.weight() instanceof Pad.Known weight && weight.stated() && weight.unitWeight() > 0
                ? Section19_2.lightweight(weight.unitWeight()).value()
                : Section19_2.LEAST_LAMBDA;
    }

    private static void tellReach(Footing pad, Working working) {
        working.step("o", "stands out", Dimension.LENGTH, pad.cantilever(), "max( 0 , ( B1 - l1 ) / 2 )");
    }

    private static Judged bending(Footing pad, double strength, double lambda, Working working) {
        tellReach(pad, working);
        working.step("M", "moment over the whole width", Dimension.MOMENT, pad.moment(), "q × B2 × o^2 / 2");
        working.step("S", "section modulus", Dimension.SECTION_MODULUS, pad.sectionModulus(), "B2 × h^2 / 6");
        double stress = working.step("fu", "tension", Dimension.STRESS, pad.moment() / pad.sectionModulus(), "M / S");
        double allowed = ConcreteSteps.flexure(strength, lambda, working);
        return Worst.compared(working, "fu", "φft", new Judged(Measure.STRESS, stress, allowed));
    }

    private static Judged oneWay(Footing pad, double strength, double lambda, Working working) {
        tellReach(pad, working);
        double shear = working.step(
                "Vu", "one-way shear beyond a depth", Dimension.FORCE, pad.oneWayShear(), "q × B2 × max( 0 , o - h )");
        double capacity = working.rule(
                "φVn",
                Section14_5.oneWay(strength, lambda, pad.across(), pad.depth()),
                "design one-way shear",
                Dimension.FORCE,
                "φ × 4 / 3 × λ × rf × B2 × h");
        return Worst.compared(working, "Vu", "φVn", new Judged(Measure.FORCE, shear, capacity));
    }

    private static Judged twoWay(Footing pad, double strength, double lambda, Working working) {
        boolean reaches = pad.twoWayShear() > 0;
        double shear = working.step(
                "Vu",
                "two-way shear outside half a depth",
                Dimension.FORCE,
                pad.twoWayShear(),
                reaches ? "q × ( B1 × B2 - ( l1 + h ) × ( l2 + h ) )" : "0 × q");
        working.step("bo", "perimeter there", Dimension.LENGTH, pad.around(), "2 × ( l1 + l2 + 2 × h )");
        double capacity = ConcreteSteps.twoWay(strength, lambda, pad.beta(), pad.around(), pad.depth(), working);
        return Worst.compared(working, "Vu", "φVn", new Judged(Measure.FORCE, shear, capacity));
    }
}
