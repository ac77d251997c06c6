package dev.underprop.wire.meaning;

import dev.underprop.api.model.Mat;
import dev.underprop.api.model.Pad;
import dev.underprop.api.model.PadGrowth;
import dev.underprop.api.model.StockPad;
import dev.underprop.wire.fault.Messages;
import dev.underprop.wire.quantity.Kind;
import dev.underprop.wire.quantity.UnitSystem;
import dev.underprop.wire.quantity.ValueWriter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Writes the sizes in which a pad can be had, each as a plan would. */
final class PadGrower {

    /** Slack for sums of steps (m). */
    private static final double FIT = 1e-9;

    private final Pad pad;
    private final @Nullable PadGrowth growth;
    private final UnitSystem system;
    private final double along;
    private final double across;
    private final double thick;
    private final double step;
    private final double thickStep;
    private final int sideSteps;
    private final int thickSteps;
    private final int moreSleepers;

    PadGrower(StockPad given, Spot at) {
        this.pad = given.getPad();
        this.growth = given.getGrow();
        Spot silent = new Spot("", new Findings());
        this.along = silent.text("along", pad.getAlong()).quantityOr(Range.THICKNESS, Double.NaN);
        this.across = silent.text("across", pad.getAcross()).quantityOr(Range.THICKNESS, Double.NaN);
        this.thick = silent.text("thickness", pad.getThickness()).quantityOr(Range.THICKNESS, Double.NaN);
        this.system = pad.getAlong().strip().endsWith("m") ? UnitSystem.SI : UnitSystem.US;
        Text side = at.text("side", growth == null ? null : growth.getSide());
        Text sideStep = at.text("step", growth == null ? null : growth.getStep());
        Text thickness = at.text("thickness", growth == null ? null : growth.getThickness());
        Text thicknessStep = at.text("thicknessStep", growth == null ? null : growth.getThicknessStep());
        both(side, sideStep);
        both(thickness, thicknessStep);
        this.step = sideStep.quantityOr(Range.GROWTH, Double.NaN);
        this.thickStep = thicknessStep.quantityOr(Range.GROWTH, Double.NaN);
        this.sideSteps = steps(side, longest(), step);
        this.thickSteps = steps(thickness, thick, thickStep);
        Mat mat = pad.getMat();
        Integer most = growth == null ? null : growth.getSleepers();
        this.moreSleepers = most == null || mat == null ? 0 : Math.max(0, most - mat.getSleepers());
        foreign(thickness, most, at);
    }

    /** A mat grows along its sleepers. */
    private double longest() {
        return pad.getMat() == null ? Math.max(along, across) : runsAlong() ? along : across;
    }

    private boolean runsAlong() {
        return pad.getMat() != null && pad.getMat().getRun().strip().equalsIgnoreCase("along");
    }

    private static void both(Text one, Text other) {
        if (one.given() != other.given()) {
            Text missing = one.given() ? other : one;
            missing.spot().report(Messages.GROWTH_INCOMPLETE, "", missing.name());
        }
    }

    private static int steps(Text most, double from, double step) {
        double to = most.quantityOr(Range.THICKNESS, Double.NaN);
        if (to < from - FIT) {
            most.spot().report(Messages.GROWTH_TURNED, most.value());
        }
        double steps = (to - from + FIT) / step;
        return steps >= 0 ? (int) Math.min(steps, Integer.MAX_VALUE / 4) : 0;
    }

    private void foreign(Text thickness, @Nullable Integer sleepers, Spot at) {
        boolean mat = pad.getMat() != null;
        boolean fixed = mat || pad.getCrib() != null || pad.getKind().strip().equalsIgnoreCase("slab");
        if (thickness.given() && fixed) {
            thickness.spot().report(Messages.GROWTH_FOREIGN, "", "thickness");
        }
        if (sleepers != null && !mat) {
            at.member("sleepers").report(Messages.GROWTH_FOREIGN, "", "sleepers");
        }
        if (growth != null && pad.getRating() != null) {
            at.report(Messages.GROWTH_FOREIGN, "", "size, since its rating is of one size");
        }
    }

    boolean grows() {
        return growth != null;
    }

    /** How many there are. */
    double sizes() {
        return (sideSteps + 1.0) * (thickSteps + 1.0) * (moreSleepers + 1.0);
    }

    /** All of them, the smallest first. */
    List<Pad> pads() {
        List<Pad> pads = new ArrayList<>();
        for (int s = 0; s <= sideSteps; s++) {
            for (int t = 0; t <= thickSteps; t++) {
                for (int n = 0; n <= moreSleepers; n++) {
                    pads.add(pads(s, t, n));
                }
            }
        }
        return pads;
    }

    private Pad pads(int s, int t, int n) {
        double more = s > 0 ? s * step : 0;
        double x = along;
        double y = across;
        Mat mat = pad.getMat();
        if (mat == null) {
            x += more;
            y += more;
        } else if (runsAlong()) {
            x += more;
            y += n * across / mat.getSleepers();
        } else {
            y += more;
            x += n * along / mat.getSleepers();
        }
        return sized(x, y, t > 0 ? thick + t * thickStep : thick, n);
    }

    private Pad sized(double x, double y, double z, int n) {
        Pad sized = new Pad()
                .name(name(x, y, z))
                .kind(pad.getKind())
                .along(Kind.SIZE.planText(x, system))
                .across(Kind.SIZE.planText(y, system))
                .thickness(Kind.SIZE.planText(z, system));
        sized.setMake(pad.getMake());
        sized.setStrength(pad.getStrength());
        sized.setYieldStress(pad.getYieldStress());
        sized.setThicknessMeasured(pad.getThicknessMeasured());
        sized.setStands(pad.getStands());
        sized.setMat(mat(n));
        sized.setCrib(pad.getCrib());
        sized.setCentring(pad.getCentring());
        sized.setUnitWeight(pad.getUnitWeight());
        return sized;
    }

    private @Nullable Mat mat(int more) {
        Mat mat = pad.getMat();
        if (mat == null || more == 0) {
            return mat;
        }
        Mat wider = new Mat()
                .run(mat.getRun())
                .sleepers(mat.getSleepers() + more)
                .species(mat.getSpecies())
                .grade(mat.getGrade());
        wider.setBearers(mat.getBearers());
        wider.setSize(mat.getSize());
        wider.setBreadth(mat.getBreadth());
        wider.setDepth(mat.getDepth());
        wider.setGradeAssumedBy(mat.getGradeAssumedBy());
        wider.setTreatment(mat.getTreatment());
        wider.setIncised(mat.getIncised());
        wider.setPlate(mat.getPlate());
        return wider;
    }

    /** The size stands in the name whole; what people call the pad gives way where both are too long. */
    private String name(double x, double y, double z) {
        String size = " " + number(x) + " x " + number(y) + " x " + Kind.SIZE.planText(z, system);
        int room = Math.max(1, 64 - size.length());
        String called = pad.getName();
        return (called.length() > room ? called.substring(0, room) : called) + size;
    }

    private String number(double length) {
        return ValueWriter.nine(Kind.SIZE.value(length, system));
    }
}
