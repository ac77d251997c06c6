package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Plans.INCH;
import static dev.underprop.engine.assess.Plans.POUND;
import static dev.underprop.engine.assess.Plans.PSF;
import static dev.underprop.engine.assess.Plans.PSI;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.aci318_19.Section14_3;
import dev.underprop.engine.clause.aci318_19.Section14_5;
import dev.underprop.engine.clause.bowles5.Section9_6;
import dev.underprop.engine.clause.bowles5.Table9_1;
import dev.underprop.engine.clause.westergaard.Slab;
import dev.underprop.engine.pad.Footing;
import dev.underprop.engine.pad.PadLoad;
import dev.underprop.engine.pad.PadStrength;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.plan.Post;
import dev.underprop.engine.plan.PostType;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Inputs;
import java.util.stream.Stream;

/** Pads and the ground under them. */
final class PadFigures {

    private PadFigures() {}

    static double plainConcrete(Case published, Expected wanted) {
        Inputs in = published.inputs();
        double size = in.number("pad_in") * INCH;
        double plate = in.number("plate_in") * INCH;
        double strength = in.number("strength_psi") * PSI;
        double depth = FactorFigures.value(Section14_3.footing(in.number("thickness_in") * INCH));
        Footing pad = new Footing(size, size, depth, plate, plate, in.number("pressure_psf") * PSF);
        return switch (wanted.name()) {
            case "depth" -> pad.depth();
            case "sectionModulus" -> pad.sectionModulus();
            case "designMoment" -> Section14_5.flexure(strength, 1).value() * pad.sectionModulus();
            case "moment" -> pad.moment();
            case "designOneWayShear" ->
                Section14_5.oneWay(strength, 1, pad.across(), depth).value();
            case "designTwoWayShear" ->
                Section14_5.twoWay(strength, 1, pad.beta(), pad.around(), depth).value();
            default -> pad.twoWayShear();
        };
    }

    static double slab(Case published, Expected wanted) {
        Inputs in = published.inputs();
        double pci = PSI / INCH;
        Slab slab = new Slab(
                in.number("thickness_in") * INCH, in.number("modulus_psi") * PSI, in.number("subgrade_pci") * pci);
        double load = in.number("load_lbf") * POUND;
        double radius = in.number("radius_in") * INCH;
        return switch (wanted.name()) {
            case "stiffnessRadius" -> slab.stiffnessRadius().value();
            case "resistingRadius" -> slab.resistingRadius(radius).value();
            case "interiorStress" -> slab.interior(load, radius).value();
            default -> slab.interiorDeflection(load, radius).value();
        };
    }

    /** The load at which the stress of a crossing is all that is allowed, the load in the middle. */
    static double crib(Case published, Expected wanted) {
        double timber = wanted.given().number("timber_in") * INCH;
        int members = (int) published.inputs().number("timbers");
        Pad.Stack stack = new Pad.Stack(members, timber, published.inputs().number("bearing_psi") * PSI, "guide", true);
        Pad pad = new Pad(
                "crib", Pad.Kind.CRIB, 6 * timber, 6 * timber, 4 * timber, new Pad.Unknown(), stack, new Pad.Within(0));
        PostType.Plate whole = new PostType.Plate(6 * timber, 6 * timber);
        Post post = Props.post(whole, whole, pad);
        double load = 1000;
        CheckResult.Judged judged = Props.judged(PadStrength.judge(
                post,
                new Ground.Unstated(),
                new PadLoad(load, load, 0, new PadLoad.Foot(0, true)),
                Double.POSITIVE_INFINITY,
                Working.OFF));
        return load * judged.capacity() / judged.demand();
    }

    static double subgrade(Case published, Expected wanted) {
        Inputs in = published.inputs();
        return Section9_6.modulus(in.number("allowable_kPa") * 1000, in.number("safety"))
                .value();
    }

    static double range(Case published, Expected wanted) {
        Table9_1.Row row = Stream.of(Table9_1.Row.values())
                .filter(r -> r.title().equals(wanted.given().text("soil")))
                .findFirst()
                .orElseThrow();
        return wanted.name().equals("from") ? row.from() : row.to();
    }
}
