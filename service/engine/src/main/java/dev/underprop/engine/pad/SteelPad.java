package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.aisc360_16.SectionF11;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Outcome;
import java.util.List;

/** A steel plate on the ground: what stands out under the base plate bends under an even pressure. */
final class SteelPad {

    private SteelPad() {}

    /**
     * @param load greatest load of the allowable stress combinations (N)
     * @param off how far off the middle it may stand (m)
     */
    static Finding judge(Pad pad, double yield, Plate base, double load, double off, Working working) {
        working.analysis("P", "greatest load of the post", Dimension.FORCE, load);
        Outcome uneven = OffCentre.factor(pad, off, "e", working);
        if (uneven instanceof Outcome.Refused refused) {
            return working.compared("P", "", new CheckResult.Refused(Measure.FORCE, load, refused.reason()));
        }
        double pressure = working.step(
                "q",
                "pressure of the worst corner, taken all over",
                Dimension.STRESS,
                load / pad.area() * ((Outcome.Value) uneven).cited().value(),
                "P / ( B × L ) × m");
        double more = 2 * PadStrength.aside(pad);
        Strip along = new Strip("B", pad.along() + more, base.along(), pad.thickness());
        Strip across = new Strip("L", pad.across() + more, base.across(), pad.thickness());
        return Worst.told(
                working, List.of(w -> bending(along, pressure, yield, w), w -> bending(across, pressure, yield, w)));
    }

    /** A strip of the plate. */
    private record Strip(String symbol, double size, double plate, double thickness) {}

    /** Stress on the plastic section modulus of a strip, against the allowable one. */
    private static Judged bending(Strip strip, double pressure, double yield, Working working) {
        double thickness = strip.thickness;
        working.plan("p", "base plate in this direction", Dimension.LENGTH, strip.plate);
        double out = working.step(
                "o",
                "stands out, the plate bending half way to its edge",
                Dimension.LENGTH,
                Math.max(0, (strip.size - CastPad.loaded(strip.plate)) / 2),
                "max( 0 , ( " + strip.symbol + " + 2 × c - p / 2 ) / 2 )");
        double moment = working.step("M", "moment by width", Dimension.FORCE, pressure * out * out / 2, "q × o^2 / 2");
        working.plan("Fy", "yield stress", Dimension.STRESS, yield);
        double allowed = working.rule(
                "Ma",
                SectionF11.plate(yield, thickness),
                "allowable moment by width",
                Dimension.FORCE,
                "min( Fy × t^2 / 4 , 1.6 × Fy × t^2 / 6 ) / 1.67");
        double modulus = working.step(
                "Z", "plastic section modulus by width", Dimension.AREA, thickness * thickness / 4, "t^2 / 4");
        double stress = working.step("f", "stress", Dimension.STRESS, moment / modulus, "M / Z");
        double most = working.step("Fa", "allowable stress", Dimension.STRESS, allowed / modulus, "Ma / Z");
        return Worst.compared(working, "f", "Fa", new Judged(Measure.STRESS, stress, most));
    }
}
