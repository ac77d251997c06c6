package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Outcome;

/**
 * A timber mat by NDS 2018: sleepers and bearers in bending and shear, both pressed where they cross. All timber is taken as wet
 * and as loaded for ever, and shear is taken at the face of what presses; the flat use factor, which helps, is left out. The
 * pressure of the worst corner is taken under the whole mat. A steel plate on the timber is judged with it.
 */
final class MatPad {

    static final Citation RULE =
            Citation.remembered("NDS", "2018", "3.3, 3.4 and 3.10 with Table 4.3.1; mats of sleepers by statics");

    /** Sums of sizes as sold and a mat as measured may differ by so much, 1/4 in (m). */
    private static final double FIT = 0.0254 / 4;

    /** Timber thicker than this is sawn as a beam, a stringer, a post or a timber, 4.5 in (m). */
    private static final double THICK = 4.5 * 0.0254;

    /** Beams and stringers are wider than thick by more than this, 2 in (m). */
    private static final double STRINGER = 2 * 0.0254 * (1 + 1e-9);

    private final Pad pad;
    private final Pad.Mat mat;
    private final double width;
    private final double thickness;
    private final double length;
    private final double breadth;
    private final double seat;
    private final double over;

    private MatPad(Pad pad, Pad.Mat mat, Plate base) {
        this.pad = pad;
        this.mat = mat;
        this.width = Math.max(mat.timber().ply().breadth(), mat.timber().ply().depth());
        this.thickness =
                Math.min(mat.timber().ply().breadth(), mat.timber().ply().depth());
        this.length = mat.alongX() ? pad.along() : pad.across();
        this.breadth = mat.alongX() ? pad.across() : pad.along();
        Plate on = on(mat, base);
        this.seat = mat.alongX() ? on.along() : on.across();
        this.over = mat.alongX() ? on.across() : on.along();
    }

    /** What stands on the timber: a plate laid on it, or the base plate itself. */
    private static Plate on(Pad.Mat mat, Plate base) {
        return mat.spread() instanceof Pad.SpreadPlate steel ? new Plate(steel.along(), steel.across()) : base;
    }

    /**
     * @param load greatest load of the allowable stress combinations (N)
     * @param off how far off the middle it may stand (m)
     */
    static Finding judge(Pad pad, Pad.Mat mat, Plate base, double load, double off) {
        MatPad one = new MatPad(pad, mat, base);
        String missing = one.missing();
        if (!missing.isEmpty()) {
            return new CheckResult.NotChecked(missing);
        }
        Finding spread =
                SpreadPad.judge(pad, mat, base, load, off, one.capacity().bearing());
        if (!(spread instanceof Judged steel)) {
            return spread;
        }
        Outcome uneven = OffCentre.factor(pad, off);
        return uneven instanceof Outcome.Refused refused
                ? new CheckResult.Refused(Measure.FORCE, load, refused.reason())
                : Worst.of(one.judge(load * ((Outcome.Value) uneven).cited().value()), steel);
    }

    /**
     * What the timber under the base plate bears across the grain, over the whole plate (Pa), NaN where it is not known. Where
     * the plate is wider than the timber, less, and nothing is known where such a plate may stand off the middle.
     */
    static double bearing(Pad pad, Pad.Mat mat, Plate base) {
        MatPad one = new MatPad(pad, mat, base);
        double plate = mat.bearers() > 0 ? one.seat : one.over;
        return one.treatment().isEmpty() && !one.beyond()
                ? one.capacity().bearing() * Math.min(1, one.top() / plate)
                : Double.NaN;
    }

    private String missing() {
        double onTop = top() - (mat.bearers() > 0 ? seat : over);
        if (!treatment().isEmpty()) {
            return treatment();
        }
        if (thickness > THICK && width - thickness > STRINGER) {
            return "the values of timbers sawn as beams and stringers do not hold flat";
        }
        if (!capacity().hasBending()) {
            return "the tables give no bending value for " + mat.timber().label();
        }
        if (Math.abs(mat.sleepers() * width - breadth) > FIT || mat.bearers() * width > length + FIT) {
            return "the size of the mat is not that of its sleepers side by side without gaps, laid flat";
        }
        if (Math.abs((mat.bearers() > 0 ? 2 : 1) * thickness - pad.thickness()) > FIT) {
            return "the thickness of the mat is not that of its layers";
        }
        // A load spreads in wood by no more than it goes down, and a timber that is pressed on one side alone rolls.
        if (onTop / 2 + pad.statedOffset() > Math.min(thickness, width / 2)) {
            return "the base plate does not stand on all timbers under it; what lies beside it carries nothing";
        }
        return beyond() ? "the base plate may stand off the middle and reach beyond the timbers under it" : "";
    }

    /** Width of the timbers that the base plate stands on (m). */
    private double top() {
        return (mat.bearers() > 0 ? mat.bearers() : mat.sleepers()) * width;
    }

    /** Whether the plate may reach beyond its timbers on one side more than on the other. */
    private boolean beyond() {
        double plate = mat.bearers() > 0 ? seat : over;
        return pad.statedOffset() > 0 && plate / 2 + pad.statedOffset() > top() / 2 + 1e-4;
    }

    private String treatment() {
        return switch (mat.timber().details().treatment()) {
            case UNSTATED -> "whether the timber of the mat is treated is not stated";
            case INCISING_UNSTATED -> "whether the treated timber of the mat is incised is not stated";
            case FIRE_RETARDANT -> "fire retardant treatment: its effect is known to the treater alone";
            case UNTREATED, NOT_INCISED, INCISED -> "";
        };
    }

    /** @param load that would press everywhere as hard as the worst corner is pressed (N) */
    private Judged judge(double load) {
        double pressure = load / pad.area();
        double under = mat.bearers() > 0 ? mat.bearers() * width : CastPad.loaded(seat);
        Judged worst = outstanding(pressure * breadth, (length - under) / 2 + PadStrength.aside(pad), mat.sleepers());
        if (mat.bearers() == 0) {
            return worst;
        }
        double crossing = mat.sleepers() * width * mat.bearers() * width;
        return Worst.of(
                worst,
                outstanding(
                        pressure * length,
                        (breadth - CastPad.loaded(over)) / 2 + PadStrength.aside(pad),
                        mat.bearers()),
                new Judged(Measure.STRESS, load / crossing, capacity().bearing()));
    }

    /** What stands out under a line load (N/m), over so many timbers side by side. */
    private Judged outstanding(double line, double out, int timbers) {
        double reach = Math.max(0, out);
        double modulus = timbers * width * thickness * thickness / 6;
        double area = timbers * width * thickness;
        return Worst.of(
                new Judged(
                        Measure.STRESS,
                        line * reach * reach / 2 / modulus,
                        capacity().bending(LoadDuration.PERMANENT, 0)),
                new Judged(Measure.STRESS, 1.5 * line * reach / area, capacity().shear(LoadDuration.PERMANENT)));
    }

    /** A pad lies on the ground, so that it is wet, whatever the plan says of the house. */
    private TimberCapacity capacity() {
        Member one = mat.timber();
        return new TimberCapacity(
                new Member(
                        one.label(),
                        one.ply(),
                        1,
                        one.grade(),
                        one.nominal(),
                        Member.Moisture.WET,
                        one.weight(),
                        one.details()),
                1);
    }
}
