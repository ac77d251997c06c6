package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.clause.aci318_19.Section13_2;
import dev.underprop.engine.clause.aci318_19.Section14_3;
import dev.underprop.engine.clause.aci318_19.Section14_5;
import dev.underprop.engine.clause.aci318_19.Section19_2;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Outcome;

/**
 * A pad of plain concrete cast on the ground, ACI 318-19 chapter 14: bending, one-way and two-way shear under factored load.
 * The pressure of the worst corner is taken under the whole pad; the pad's own weight bends nothing.
 */
final class CastPad {

    private CastPad() {}

    /** @param off how far off the middle the load may stand (m) */
    static Finding judge(Pad pad, double strength, Plate base, double factored, double off) {
        if (Double.isNaN(strength)) {
            return new CheckResult.NotChecked(
                    "the strength of the concrete of pad " + pad.name() + " is not stated (declare: strength)");
        }
        if (Double.isNaN(factored)) {
            return PadStrength.unfactored();
        }
        Outcome specified = Section19_2.strength(strength);
        Outcome depth = Section14_3.footing(pad.thickness());
        Outcome uneven = OffCentre.factor(pad, off);
        for (Outcome outcome : new Outcome[] {specified, depth, uneven}) {
            if (outcome instanceof Outcome.Refused refused) {
                return new CheckResult.Refused(Measure.FORCE, factored, refused.reason());
            }
        }
        double pressure = factored / pad.area() * value(uneven);
        // As if the pad reached as far on every side as on the long side of a post off its middle.
        double more = 2 * PadStrength.aside(pad);
        Footing footing = new Footing(
                pad.along() + more,
                pad.across() + more,
                value(depth),
                loaded(base.along()),
                loaded(base.across()),
                pressure);
        return judge(footing, strength, lambda(pad));
    }

    private static Finding judge(Footing footing, double strength, double lambda) {
        return Worst.of(
                bending(footing, strength, lambda),
                bending(footing.turned(), strength, lambda),
                oneWay(footing, strength, lambda),
                oneWay(footing.turned(), strength, lambda),
                twoWay(footing, strength, lambda));
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

    private static Judged bending(Footing pad, double strength, double lambda) {
        double stress = pad.moment() / pad.sectionModulus();
        return new Judged(
                Measure.STRESS, stress, Section14_5.flexure(strength, lambda).value());
    }

    private static Judged oneWay(Footing pad, double strength, double lambda) {
        double capacity =
                Section14_5.oneWay(strength, lambda, pad.across(), pad.depth()).value();
        return new Judged(Measure.FORCE, pad.oneWayShear(), capacity);
    }

    private static Judged twoWay(Footing pad, double strength, double lambda) {
        double capacity = Section14_5.twoWay(strength, lambda, pad.beta(), pad.around(), pad.depth())
                .value();
        return new Judged(Measure.FORCE, pad.twoWayShear(), capacity);
    }
}
