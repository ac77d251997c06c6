package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.clause.aisc360_16.SectionF11;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Outcome;

/** A steel plate on the ground: what stands out under the base plate bends under an even pressure. */
final class SteelPad {

    private SteelPad() {}

    /**
     * @param load greatest load of the allowable stress combinations (N)
     * @param off how far off the middle it may stand (m)
     */
    static Finding judge(Pad pad, double yield, Plate base, double load, double off) {
        Outcome uneven = OffCentre.factor(pad, off);
        if (uneven instanceof Outcome.Refused refused) {
            return new CheckResult.Refused(Measure.FORCE, load, refused.reason());
        }
        double pressure = load / pad.area() * ((Outcome.Value) uneven).cited().value();
        double more = 2 * PadStrength.aside(pad);
        return Worst.of(
                bending(pad.along() + more, base.along(), pad.thickness(), pressure, yield),
                bending(pad.across() + more, base.across(), pad.thickness(), pressure, yield));
    }

    /** Stress on the plastic section modulus of a strip, against the allowable one. */
    private static Judged bending(double size, double plate, double thickness, double pressure, double yield) {
        double out = Math.max(0, (size - CastPad.loaded(plate)) / 2);
        double moment = pressure * out * out / 2;
        double allowed = SectionF11.plate(yield, thickness).value();
        double modulus = thickness * thickness / 4;
        return new Judged(Measure.STRESS, moment / modulus, allowed / modulus);
    }
}
