package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.check.Working;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.soil.Base;
import dev.underprop.engine.soil.Factors;
import dev.underprop.engine.soil.GroundWater;
import dev.underprop.engine.soil.Inclination;
import dev.underprop.engine.soil.Push;
import dev.underprop.engine.soil.Sliding;
import dev.underprop.engine.soil.Soil;
import dev.underprop.engine.soil.Wedge;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Dimension;

/**
 * What ground of known strength bears under a pad: the ultimate pressure of the theory over the factor of safety, both with the
 * weight of the ground beside the pad in them, for the part of the pad that bears and the sideways push of its post.
 */
final class GroundStrength {

    /** Pocket penetrometer readings must repeat within 1/4 ton per square foot (Pa): TxDOT. */
    private static final double REPEAT = 500 * 4.4482216152605 / (0.3048 * 0.3048);

    private GroundStrength() {}

    static Finding judge(Ground.Strength ground, Tread tread, Working working) {
        if (ground.condition() == Ground.Condition.ORGANIC) {
            return new CheckResult.Refused(
                    Measure.PRESSURE, tread.pressure(), "organic ground and peat carry no pad; have it investigated");
        }
        String missing = missing(ground);
        if (missing.isEmpty() && tread.tilt() > 0 && !ground.method().inclines()) {
            missing =
                    "Terzaghi's theory is for upright loads, and posts push sideways (declare: method, of another author)";
        }
        return missing.isEmpty() ? known(ground, tread, working) : new CheckResult.NotChecked(missing);
    }

    private static Finding known(Ground.Strength ground, Tread tread, Working working) {
        Soil soil = soil(ground, tread.breadth());
        if (tread.tilt() > 0
                && tread.tilt() > Sliding.allowed(soil, tread.pressure()).value()) {
            return new CheckResult.Refused(
                    Measure.PRESSURE,
                    tread.pressure(),
                    "the pad may slide on its ground under the sideways push of its post, with a factor of safety of 1.5");
        }
        return new CheckResult.Judged(Measure.PRESSURE, tread.pressure(), allowable(ground, soil, tread, working));
    }

    private static String missing(Ground.Strength ground) {
        if (ground.condition() == Ground.Condition.FILL) {
            return "the ground is fill; that its strength was found in it and holds all over is not shown";
        }
        if (ground.condition() != Ground.Condition.UNDISTURBED) {
            return "whether the ground is undisturbed is not stated (declare: condition)";
        }
        if (Double.isNaN(ground.founding().depth())) {
            return "the founding depth is not stated (declare: foundingDepth)";
        }
        if (ground.shear() instanceof Ground.Penetrometer penetrometer) {
            return scatter(penetrometer);
        }
        return ground.shear() instanceof Ground.Drained ? water(ground.weight()) : "";
    }

    private static String water(Ground.Weight weight) {
        if (Double.isNaN(weight.water())) {
            return "how deep the water stands is not stated (declare: waterDepth)";
        }
        return Double.isNaN(weight.saturated())
                ? "what the ground weighs below water is not stated (declare: saturatedUnitWeight)"
                : "";
    }

    private static String scatter(Ground.Penetrometer penetrometer) {
        if (penetrometer.readings().size() < 2) {
            return "one reading of a pocket penetrometer says little: take at least two";
        }
        return penetrometer.greatest() - penetrometer.least() > REPEAT * (1 + 1e-9)
                ? "the readings of the pocket penetrometer lie more than 1/4 ton per square foot (500 psf) apart: repeat them"
                : "";
    }

    /** Allowable pressure (Pa). */
    private static double allowable(Ground.Strength ground, Soil soil, Tread tread, Working working) {
        double breadth = Math.min(tread.along(), tread.across());
        double length = Math.max(tread.along(), tread.across());
        double depth = ground.founding().factors() ? ground.founding().depth() : 0;
        Base base = new Base(breadth, length, tread.breadth(), depth);
        Push push = new Push(tread.pressure(), tread.tilt());
        double ultimate = ground.method().ultimate(soil, base, push).value();
        if (working != Working.OFF) {
            tell(ground, soil, base, push, working);
        }
        working.rule(
                "qu",
                "ultimate pressure",
                Dimension.STRESS,
                ultimate,
                ground.method().citation(),
                "");
        working.plan("FS", "factor of safety", Dimension.NUMBER, ground.safety());
        return working.step("qa", "allowable pressure", Dimension.STRESS, ultimate / ground.safety(), "qu / FS");
    }

    private static void tell(Ground.Strength ground, Soil soil, Base base, Push push, Working working) {
        Citation rule = ground.method().citation();
        Factors n = ground.method().factors(soil.friction());
        Inclination i = ground.method().inclination(soil, base, push);
        working.plan("cg", "cohesion, or undrained strength", Dimension.STRESS, soil.cohesion());
        working.plan("φg", "angle of friction", Dimension.ANGLE, soil.friction());
        working.plan("γg", "unit weight of the ground below", Dimension.PER_VOLUME, soil.unitWeight());
        working.plan("qo", "pressure of the ground beside the pad", Dimension.STRESS, soil.overburden());
        working.rule("Nc", "factor of cohesion", Dimension.NUMBER, n.cohesion(), rule, "");
        working.rule("Nq", "factor of overburden", Dimension.NUMBER, n.overburden(), rule, "");
        working.rule("Nγ", "factor of weight", Dimension.NUMBER, n.weight(), rule, "");
        working.rule("ic", "what the sideways push leaves of cohesion", Dimension.NUMBER, i.cohesion(), rule, "");
        working.rule("iq", "what it leaves of overburden", Dimension.NUMBER, i.overburden(), rule, "");
        working.rule("iγ", "what it leaves of weight", Dimension.NUMBER, i.weight(), rule, "");
    }

    /** @param breadth shorter side of the whole pad (m): water within so much below it counts */
    private static Soil soil(Ground.Strength ground, double breadth) {
        Ground.Weight weight = ground.weight();
        double depth = ground.founding().depth();
        if (ground.shear() instanceof Ground.Drained drained) {
            GroundWater water = new GroundWater(weight.unit(), weight.saturated(), weight.water());
            return new Soil(
                    drained.cohesion(), drained.friction(), water.below(depth, breadth), water.overburden(depth));
        }
        // Without friction the whole weight beside the pad counts, water and all, and the weight below it does not.
        return new Soil(undrained(ground), 0, weight.unit(), weight.unit() * depth);
    }

    /** How far from a pad's edge ground takes part when the pad gives way (m). @param breadth shorter side of the pad (m) */
    static double reach(Ground.Strength ground, double breadth) {
        double friction = ground.shear() instanceof Ground.Drained drained ? drained.friction() : 0;
        return Wedge.reach(friction, breadth).value();
    }

    /** Undrained strength (Pa), 0 where the ground is known by friction: half of what a penetrometer reads at the least. */
    static double undrained(Ground.Strength ground) {
        if (ground.shear() instanceof Ground.Undrained clay) {
            return clay.strength();
        }
        return ground.shear() instanceof Ground.Penetrometer penetrometer ? penetrometer.least() / 2 : 0;
    }
}
