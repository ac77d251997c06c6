package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.TimberCapacity;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.nds2018.LoadDuration;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.PostType.Plate;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;
import dev.underprop.engine.standard.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A timber mat by NDS 2018: sleepers and bearers in bending and shear, both pressed where they cross. All timber is taken as wet
 * and as loaded for ever, and shear is taken at the face of what presses; the flat use factor, which helps, is left out. The
 * pressure of the worst corner is taken under the whole mat.
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
        this.seat = mat.alongX() ? base.along() : base.across();
        this.over = mat.alongX() ? base.across() : base.along();
    }

    /**
     * @param load greatest load of the allowable stress combinations (N)
     * @param off how far off the middle it may stand (m)
     */
    static Finding judge(Pad pad, Pad.Mat mat, Plate base, double load, double off, Working working) {
        MatPad one = new MatPad(pad, mat, base);
        String missing = one.missing();
        if (!missing.isEmpty()) {
            return new CheckResult.NotChecked(missing);
        }
        working.analysis("P", "greatest load of the post", Dimension.FORCE, load);
        Outcome uneven = OffCentre.factor(pad, off, "e", working);
        if (!(uneven instanceof Outcome.Value factor)) {
            String reason = ((Outcome.Refused) uneven).reason();
            return working.compared("P", "", new CheckResult.Refused(Measure.FORCE, load, reason));
        }
        double worst = working.step(
                "Pm",
                "load that would press all over like the worst corner",
                Dimension.FORCE,
                load * factor.cited().value(),
                "P × m");
        return one.judge(worst, working);
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
    private Finding judge(double load, Working working) {
        double pressure = working.step("q", "pressure", Dimension.STRESS, load / pad.area(), "Pm / ( B × L )");
        working.plan("wt", "width of a timber, laid flat", Dimension.LENGTH, width);
        working.plan("tt", "thickness of a timber", Dimension.LENGTH, thickness);
        working.plan("n", "sleepers", Dimension.NUMBER, mat.sleepers());
        working.plan("nb", "bearers", Dimension.NUMBER, mat.bearers());
        boolean bearers = mat.bearers() > 0;
        double under = bearers ? mat.bearers() * width : CastPad.loaded(seat);
        String along = mat.alongX() ? "B" : "L";
        String across = mat.alongX() ? "L" : "B";
        Layer sleepers = new Layer(
                "n",
                mat.sleepers(),
                across,
                along,
                bearers ? "nb × wt" : "p / 2",
                seat,
                length,
                under,
                pressure * breadth);
        List<Function<Working, Judged>> ways = new ArrayList<>(outstanding(sleepers));
        if (bearers) {
            Layer top = new Layer(
                    "nb",
                    mat.bearers(),
                    along,
                    across,
                    "p / 2",
                    over,
                    breadth,
                    CastPad.loaded(over),
                    pressure * length);
            ways.addAll(outstanding(top));
            ways.add(w -> crossing(load, w));
        }
        return Worst.told(working, ways);
    }

    private Judged crossing(double load, Working working) {
        double area = working.step(
                "Ac",
                "area where sleepers and bearers cross",
                Dimension.AREA,
                mat.sleepers() * width * mat.bearers() * width,
                "n × wt × nb × wt");
        double stress = working.step("fc⊥", "stress across the grain there", Dimension.STRESS, load / area, "Pm / Ac");
        double allowed = capacity().bearing(working);
        return Worst.compared(working, "fc⊥", "F'c⊥", new Judged(Measure.STRESS, stress, allowed));
    }

    /**
     * Timbers side by side that stand out under an even load.
     *
     * @param count symbol of how many
     * @param timbers how many
     * @param width symbol of the size over which the ground presses on them
     * @param size symbol of their length
     * @param held formula of the part that is held
     * @param plate size of the base plate in this direction (m)
     * @param length of them (m)
     * @param under the part that is held (m)
     * @param line load (N/m)
     */
    private record Layer(
            String count,
            int timbers,
            String width,
            String size,
            String held,
            double plate,
            double length,
            double under,
            double line) {}

    private List<Function<Working, Judged>> outstanding(Layer layer) {
        double reach = Math.max(0, (layer.length - layer.under) / 2 + PadStrength.aside(pad));
        return List.of(w -> bent(layer, reach, w), w -> sheared(layer, reach, w));
    }

    private void tell(Layer layer, double reach, Working working) {
        working.plan("p", "base plate in this direction", Dimension.LENGTH, layer.plate);
        working.step("ql", "load by length", Dimension.LINE_LOAD, layer.line, "q × " + layer.width);
        working.step(
                "o",
                "stands out",
                Dimension.LENGTH,
                reach,
                "max( 0 , ( " + layer.size + " - " + layer.held + " ) / 2 + c )");
    }

    private Judged bent(Layer layer, double reach, Working working) {
        tell(layer, reach, working);
        double modulus = working.step(
                "S",
                "section modulus",
                Dimension.SECTION_MODULUS,
                layer.timbers * width * thickness * thickness / 6,
                layer.count + " × wt × tt^2 / 6");
        double stress = working.step(
                "fb", "bending stress", Dimension.STRESS, layer.line * reach * reach / 2 / modulus, "ql × o^2 / 2 / S");
        double allowed = capacity().bending(LoadDuration.PERMANENT, 0, working);
        return Worst.compared(working, "fb", "F'b", new Judged(Measure.STRESS, stress, allowed));
    }

    private Judged sheared(Layer layer, double reach, Working working) {
        tell(layer, reach, working);
        double area = working.step(
                "A", "area", Dimension.AREA, layer.timbers * width * thickness, layer.count + " × wt × tt");
        double stress = working.step(
                "fv", "shear stress", Dimension.STRESS, 1.5 * layer.line * reach / area, "1.5 × ql × o / A");
        double allowed = capacity().shear(LoadDuration.PERMANENT, working);
        return Worst.compared(working, "fv", "F'v", new Judged(Measure.STRESS, stress, allowed));
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
