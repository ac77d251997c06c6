package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Plans.INCH;
import static dev.underprop.engine.assess.Plans.POUND;

import dev.underprop.engine.clause.distortion.AngularDistortion;
import dev.underprop.engine.clause.distortion.TensileStrain;
import dev.underprop.engine.clause.powerscrew.Screw;
import dev.underprop.engine.clause.powerscrew.Thread;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Inputs;
import java.util.stream.Stream;

/** Screws, and what a building may suffer from a lift. */
final class LiftFigures {

    private LiftFigures() {}

    static double screw(Case published, Expected wanted) {
        Inputs in = published.inputs();
        if (wanted.name().equals("byEfficiency")) {
            return Screw.byEfficiency(in.number("load_kN") * 1000, in.number("lead_mm") / 1000, in.number("efficiency"))
                    .value();
        }
        Thread thread =
                new Thread(length(in, "mean"), length(in, "lead"), StrictMath.toRadians(in.number("halfAngle_deg")));
        double friction = in.number("friction");
        return switch (wanted.name()) {
            case "leadAngle" -> thread.leadAngle().value();
            case "efficiency" -> thread.efficiency(friction).value();
            case "selfLocking" -> thread.selfLocking(friction) ? 1 : 0;
            case "raising" -> raising(in, thread);
            case "pullRaising" ->
                Screw.pull(raising(in, thread), in.number("wrench_m")).value();
            case "pullLowering" ->
                Screw.pull(thread.lowering(load(in), friction).value(), in.number("wrench_m"))
                        .value();
            case "axial" -> axial(in);
            case "twist" -> twist(in, thread);
            default -> Screw.greatestShear(axial(in), twist(in, thread)).value();
        };
    }

    private static double raising(Inputs in, Thread thread) {
        double torque = FactorFigures.value(thread.raising(load(in), in.number("friction")));
        return in.has("collarFriction")
                ? torque
                        + Screw.collar(load(in), in.number("collarFriction"), in.number("collarRadius_mm") / 1000)
                                .value()
                : torque;
    }

    private static double axial(Inputs in) {
        return Screw.axial(load(in), in.number("root_mm") / 1000).value();
    }

    private static double twist(Inputs in, Thread thread) {
        return Screw.twist(raising(in, thread), in.number("root_mm") / 1000).value();
    }

    private static double load(Inputs in) {
        return in.has("load_kN") ? in.number("load_kN") * 1000 : in.number("load_lbf") * POUND;
    }

    private static double length(Inputs in, String name) {
        return in.has(name + "_mm") ? in.number(name + "_mm") / 1000 : in.number(name + "_in") * INCH;
    }

    static double distortion(Case published, Expected wanted) {
        if (wanted.name().equals("divisor")) {
            return AngularDistortion.named(wanted.given().text("criterion"))
                    .orElseThrow()
                    .divisor();
        }
        Inputs in = published.inputs();
        double slope = AngularDistortion.between(
                in.number("one_mm") / 1000, in.number("other_mm") / 1000, in.number("distance_m"));
        return wanted.name().equals("inverse") ? 1 / slope : slope;
    }

    static double strain(Case published, Expected wanted) {
        TensileStrain category = Stream.of(TensileStrain.values())
                .filter(t -> t.title().equals(wanted.given().text("category")))
                .findFirst()
                .orElseThrow();
        return wanted.name().equals("strain") ? category.strain() : category.crack();
    }
}
