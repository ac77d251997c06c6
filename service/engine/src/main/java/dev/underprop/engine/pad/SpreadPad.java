package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.aisc360_16.SectionF11;
import dev.underprop.engine.clause.aisc360_16.SectionJ7;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;

/**
 * A steel plate between a base plate and the timber of a mat: it bends where it stands out under the base plate, and presses
 * the timber across the grain. Both under the pressure of its worst corner, with the load as far off its middle as off the
 * mat's.
 */
final class SpreadPad {

    static final Citation PRESSED = Citation.remembered("AISC", "360-16", "J7, steel on steel");

    /** Nothing to judge: no demand on something strong. */
    private static final Judged NOTHING = new Judged(Measure.STRESS, 0, 1);

    private SpreadPad() {}

    /**
     * @param base plate of the post
     * @param load greatest load of the allowable stress combinations (N)
     * @param off how far off the middle it may stand (m)
     * @param bearing of the timber across the grain (Pa)
     */
    static Finding judge(Pad pad, Pad.Mat mat, Plate base, double load, double off, double bearing) {
        if (!(mat.spread() instanceof Pad.SpreadPlate steel)) {
            return NOTHING;
        }
        if (!within(base, steel, pad.statedOffset()) || steel.along() > pad.along() || steel.across() > pad.across()) {
            return new CheckResult.NotChecked(
                    "the base plate reaches beyond the steel plate on the mat, or that plate beyond the mat");
        }
        double along = 1 / steel.along();
        double across = 1 / steel.across();
        double share = 6 * off * Math.sqrt(along * along + across * across);
        if (share > 1) {
            return new CheckResult.Refused(
                    Measure.FORCE,
                    load,
                    "the load may stand so far off the steel plate's middle that a part of it lifts");
        }
        double pressure = load / (steel.along() * steel.across()) * (1 + share);
        double aside = PadStrength.aside(pad);
        return Worst.of(
                new Judged(Measure.STRESS, pressure, bearing),
                bending(steel, steel.along(), base.along(), aside, pressure),
                bending(steel, steel.across(), base.across(), aside, pressure));
    }

    private static boolean within(Plate base, Pad.SpreadPlate steel, double offset) {
        return base.along() / 2 + offset <= steel.along() / 2 && base.across() / 2 + offset <= steel.across() / 2;
    }

    private static Judged bending(Pad.SpreadPlate steel, double size, double base, double aside, double pressure) {
        double out = Math.max(0, (size - CastPad.loaded(base)) / 2 + aside);
        double modulus = steel.thickness() * steel.thickness() / 4;
        double allowed = SectionF11.plate(steel.yield(), steel.thickness()).value();
        return new Judged(Measure.STRESS, pressure * out * out / 2 / modulus, allowed / modulus);
    }

    /** The base plate on the steel plate; where its own steel is not stated, that of the steel plate counts for both. */
    static Finding pressed(Plate base, Pad.SpreadPlate steel, double load, Working working) {
        double weaker = Double.isNaN(base.yield()) ? steel.yield() : Math.min(base.yield(), steel.yield());
        double pressure = load / (base.along() * base.across());
        double allowed = SectionJ7.contact(weaker).value();
        working.analysis("fp", "pressure of the base plate on the steel plate", Dimension.STRESS, pressure);
        working.rule("Fp", "steel on steel", Dimension.STRESS, allowed, PRESSED, "");
        return working.compared("fp", "Fp", new Judged(Measure.STRESS, pressure, allowed));
    }

    /** Its worst stress, as told: of the steel in bending, or of the timber across the grain. */
    static Judged told(Judged steel, Working working) {
        working.analysis("fs", "worst stress of the steel plate or under it", Dimension.STRESS, steel.demand());
        working.plan("Fs", "what is allowed there", Dimension.STRESS, steel.capacity());
        return Worst.compared(working, "fs", "Fs", steel);
    }
}
