package dev.underprop.engine.assess;

import static dev.underprop.engine.assess.Plans.FOOT;
import static dev.underprop.engine.assess.Plans.INCH;
import static dev.underprop.engine.assess.Plans.POUND;
import static dev.underprop.engine.assess.Plans.PSF;

import dev.underprop.engine.soil.Base;
import dev.underprop.engine.soil.BearingMethod;
import dev.underprop.engine.soil.ElasticSettlement;
import dev.underprop.engine.soil.Factors;
import dev.underprop.engine.soil.GroundWater;
import dev.underprop.engine.soil.Inclination;
import dev.underprop.engine.soil.Layers;
import dev.underprop.engine.soil.PlateTest;
import dev.underprop.engine.soil.Push;
import dev.underprop.engine.soil.Soil;
import dev.underprop.engine.soil.Stress;
import dev.underprop.fixtures.Case;
import dev.underprop.fixtures.Expected;
import dev.underprop.fixtures.Inputs;
import java.util.ArrayList;
import java.util.List;

/** Bearing capacity, stress below loads and settlement, as published. */
final class SoilFigures {

    private static final double KILO = 1000;
    private static final double PCF = PSF / FOOT;

    private SoilFigures() {}

    private static double friction(Inputs in) {
        return StrictMath.toRadians(in.number("friction_deg"));
    }

    private static BearingMethod method(Inputs in) {
        return BearingMethod.named(in.text("method")).orElseThrow();
    }

    static double factors(Case published, Expected wanted) {
        Factors factors = method(published.inputs()).factors(friction(wanted.given()));
        return switch (wanted.name()) {
            case "Nc" -> factors.cohesion();
            case "Nq" -> factors.overburden();
            default -> factors.weight();
        };
    }

    static double inclination(Case published, Expected wanted) {
        Inputs in = published.inputs();
        Soil soil = new Soil(0, friction(in), 18_000, 18_000);
        Push push = new Push(50_000, in.number("sideways_kN") / in.number("upright_kN"));
        Inclination left = method(in).inclination(soil, Base.of(1, 1), push);
        return switch (wanted.name()) {
            case "iq" -> left.overburden();
            case "ic" -> left.cohesion();
            default -> left.weight();
        };
    }

    private static double length(Inputs in, String name) {
        return in.has(name + "_ft") ? in.number(name + "_ft") * FOOT : in.number(name + "_m");
    }

    private static double pressure(Inputs in, String name) {
        return in.has(name + "_psf") ? in.number(name + "_psf") * PSF : in.number(name + "_kPa") * KILO;
    }

    private static double weight(Inputs in) {
        return in.has("unitWeight_pcf") ? in.number("unitWeight_pcf") * PCF : in.number("unitWeight_kNm3") * KILO;
    }

    private static double ultimate(Inputs in, BearingMethod method, boolean deep, double breadth, double length) {
        double depth = length(in, "depth");
        double width = in.has("width_m") ? in.number("width_m") : breadth;
        boolean wet = in.has("water_m");
        double dry = weight(in);
        GroundWater water = new GroundWater(
                dry,
                wet ? in.number("saturated_kNm3") * KILO : 2 * GroundWater.WATER,
                wet ? in.number("water_m") : 1e3);
        Soil soil =
                new Soil(pressure(in, "cohesion"), friction(in), water.below(depth, breadth), water.overburden(depth));
        return method.ultimate(soil, new Base(breadth, length, width, deep ? depth : 0))
                .value();
    }

    static double capacity(Case published, Expected wanted) {
        Inputs in = published.inputs();
        boolean byRow = wanted.given().has("method");
        BearingMethod method = method(byRow ? wanted.given() : in);
        Inputs says = byRow ? wanted.given() : in;
        boolean deep = says.has("depthFactors") && says.flag("depthFactors");
        double breadth = length(in, "breadth");
        double length = length(in, "length");
        double allowable = ultimate(in, method, deep, breadth, length) / in.number("safety");
        return wanted.name().equals("loadAllowable") ? allowable * breadth * length : allowable;
    }

    /** The square whose allowable load is the load. */
    static double size(Case published, Expected wanted) {
        Inputs in = published.inputs();
        double low = 0.1;
        double high = 10;
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            double q = ultimate(in, method(in), false, middle, middle) / in.number("safety");
            boolean enough = q * middle * middle >= in.number("load_kN") * KILO;
            high = enough ? middle : high;
            low = enough ? low : middle;
        }
        return high;
    }

    static double rigidBase(Case published, Expected wanted) {
        Inputs in = published.inputs();
        return Layers.rigidBase(
                                pressure(in, "strength"),
                                length(in, "breadth"),
                                length(in, "thickness"),
                                pressure(in, "overburden"))
                        .value()
                / in.number("safety");
    }

    static double stressCentre(Case published, Expected wanted) {
        Inputs in = published.inputs();
        return Stress.centre(length(in, "breadth"), length(in, "depth")).value();
    }

    static double stressCorner(Case published, Expected wanted) {
        return Stress.corner(wanted.given().number("m"), wanted.given().number("n"))
                .value();
    }

    static double stressPoint(Case published, Expected wanted) {
        Inputs in = published.inputs();
        double x = in.number("x_m");
        double y = in.number("y_m");
        return Stress.point(in.number("force_kN") * KILO, Math.sqrt(x * x + y * y), in.number("depth_m"))
                .value();
    }

    static double stressSpread(Case published, Expected wanted) {
        Inputs in = published.inputs();
        double force = in.number("force_lbf") * POUND;
        double size = in.number("breadth_in") * INCH;
        double depth = in.number("depth_in") * INCH;
        return wanted.name().equals("spread")
                ? Stress.spread(force, size, size, depth).value()
                : force / (size * size) * Stress.share(size, size, 0, 0, depth);
    }

    static double layer(Case published, Expected wanted) {
        Inputs in = published.inputs();
        List<ElasticSettlement.Layer> layers = new ArrayList<>();
        for (int i = 0; i < in.numbers("layer_m").size(); i++) {
            layers.add(new ElasticSettlement.Layer(
                    in.numbers("modulus_kPa").get(i) * KILO,
                    in.numbers("layer_m").get(i)));
        }
        double modulus = ElasticSettlement.mean(layers).value();
        double breadth = in.number("breadth_m");
        double length = in.number("length_m");
        double thickness = in.number("thickness_m");
        double m = length / breadth;
        double n = 2 * thickness / breadth;
        return switch (wanted.name()) {
            case "modulusMean" -> modulus;
            case "F1" -> ElasticSettlement.first(m, n).value();
            case "F2" -> ElasticSettlement.second(m, n).value();
            default ->
                ElasticSettlement.rigid(
                                pressure(in, "pressure"),
                                breadth,
                                length,
                                thickness,
                                modulus,
                                in.number("poisson"),
                                in.number("embedment"))
                        .value();
        };
    }

    static double shape(Case published, Expected wanted) {
        return switch (wanted.name()) {
            case "squareFlexibleCentre" -> ElasticSettlement.centre(1).value();
            case "squareFlexibleCorner" -> ElasticSettlement.corner(1).value();
            case "circleFlexibleCentre" -> ElasticSettlement.circle().value();
            default -> ElasticSettlement.rigidCircle().value();
        };
    }

    static double stiffness(Case published, Expected wanted) {
        Inputs in = published.inputs();
        return ElasticSettlement.stiffness(
                        in.number("breadth_m"), in.number("length_m"), pressure(in, "modulus"), in.number("poisson"))
                .value();
    }

    static double plateSettlement(Case published, Expected wanted) {
        Inputs in = published.inputs();
        return PlateTest.settlement(
                        in.number("plateSettlement_mm") / KILO, in.number("plate_m"), in.number("breadth_m"))
                .value();
    }

    static double plateBearing(Case published, Expected wanted) {
        Inputs in = published.inputs();
        return PlateTest.ultimate(pressure(in, "platePressure"), in.number("plate_m"), in.number("breadth_m"))
                .value();
    }

    static double distortion(Case published, Expected wanted) {
        Inputs in = published.inputs();
        return PlateTest.distortion(in.number("one_m"), in.number("other_m"), in.number("apart_m"))
                .value();
    }
}
