package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult;
import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.soil.Base;
import dev.underprop.engine.soil.GroundWater;
import dev.underprop.engine.soil.Soil;

/**
 * What ground of known strength bears under a pad: the ultimate pressure of the theory over the factor of safety, both with the
 * weight of the ground beside the pad in them.
 */
final class GroundStrength {

    /** Pocket penetrometer readings must repeat within 1/4 ton per square foot (Pa): TxDOT. */
    private static final double REPEAT = 500 * 4.4482216152605 / (0.3048 * 0.3048);

    private GroundStrength() {}

    static Finding judge(Ground.Strength ground, Pad pad, double pressure) {
        if (ground.condition() == Ground.Condition.ORGANIC) {
            return new CheckResult.Refused(
                    Measure.PRESSURE, pressure, "organic ground and peat carry no pad; have it investigated");
        }
        String missing = missing(ground);
        return missing.isEmpty()
                ? new CheckResult.Judged(Measure.PRESSURE, pressure, allowable(ground, pad))
                : new CheckResult.NotChecked(missing);
    }

    private static String missing(Ground.Strength ground) {
        if (ground.condition() == Ground.Condition.FILL) {
            return "the ground is fill; that its strength was found in it and holds all over is not shown";
        }
        if (ground.condition() == Ground.Condition.UNSTATED) {
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
    private static double allowable(Ground.Strength ground, Pad pad) {
        double depth = ground.founding().depth();
        double breadth = Math.min(pad.along(), pad.across());
        double length = Math.max(pad.along(), pad.across());
        Base base = new Base(breadth, length, breadth, ground.founding().factors() ? depth : 0);
        return ground.method().ultimate(soil(ground, depth, breadth), base).value() / ground.safety();
    }

    private static Soil soil(Ground.Strength ground, double depth, double breadth) {
        Ground.Weight weight = ground.weight();
        if (ground.shear() instanceof Ground.Drained drained) {
            GroundWater water = new GroundWater(weight.unit(), weight.saturated(), weight.water());
            return new Soil(
                    drained.cohesion(), drained.friction(), water.below(depth, breadth), water.overburden(depth));
        }
        // Without friction the whole weight beside the pad counts, water and all, and the weight below it does not.
        return new Soil(undrained(ground), 0, weight.unit(), weight.unit() * depth);
    }

    /** Undrained strength (Pa), 0 where the ground is known by friction: half of what a penetrometer reads at the least. */
    static double undrained(Ground.Strength ground) {
        if (ground.shear() instanceof Ground.Undrained clay) {
            return clay.strength();
        }
        return ground.shear() instanceof Ground.Penetrometer penetrometer ? penetrometer.least() / 2 : 0;
    }
}
