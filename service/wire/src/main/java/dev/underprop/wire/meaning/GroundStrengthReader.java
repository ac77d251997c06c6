package dev.underprop.wire.meaning;

import dev.underprop.api.model.GroundStrength;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.soil.BearingMethod;
import dev.underprop.engine.soil.GroundWater;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Reads ground of known strength. The supplier is to be asked only when the plan has no fault. */
final class GroundStrengthReader {

    private GroundStrengthReader() {}

    /**
     * What else is said of the ground.
     *
     * @param depth of the pads' underside (m), NaN where not stated
     * @param condition as found
     * @param gives how far it gives
     */
    record Around(double depth, Ground.Condition condition, Supplier<Ground.Subgrade> gives) {}

    static Supplier<Ground> read(@Nullable GroundStrength given, Spot at, Around around) {
        if (given == null) {
            return Ground.Unstated::new;
        }
        Optional<BearingMethod> method =
                at.text("method", given.getMethod()).choice(BearingMethod.ids()).flatMap(BearingMethod::named);
        Supplier<Ground.Shear> shear = shear(given, at);
        Ground.Weight weight = weight(given, at);
        Text source = at.text("source", given.getSource());
        source.said();
        boolean factors = Boolean.TRUE.equals(given.getDepthFactors());
        return () -> new Ground.Strength(
                method.orElseThrow(),
                shear.get(),
                weight,
                new Ground.Founding(around.depth(), factors),
                given.getSafety(),
                source.value(),
                around.condition(),
                around.gives().get());
    }

    private static Supplier<Ground.Shear> shear(GroundStrength given, Spot at) {
        Text friction = at.text("friction", given.getFriction());
        Text cohesion = at.text("cohesion", given.getCohesion());
        Text undrained = at.text("undrained", given.getUndrained());
        boolean drained = friction.given() || cohesion.given();
        boolean probed = given.getPenetrometer() != null;
        int ways = (drained ? 1 : 0) + (undrained.given() ? 1 : 0) + (probed ? 1 : 0);
        if (ways > 1) {
            at.report(Messages.SHEAR_TWO_WAYS, "");
        } else if (ways == 0) {
            at.report(Messages.SHEAR_UNSTATED, "", "friction, undrained or penetrometer");
        } else if (drained && friction.given() != cohesion.given()) {
            at.report(Messages.SHEAR_UNSTATED, "", friction.given() ? "cohesion" : "friction");
        }
        double phi = friction.quantityOr(Range.FRICTION, Double.NaN);
        double c = cohesion.quantityOr(Range.SOIL_COHESION, Double.NaN);
        double su = undrained.quantityOr(Range.SOIL_PRESSURE, Double.NaN);
        List<Double> readings = readings(given.getPenetrometer(), at.member("penetrometer"));
        return () -> drained
                ? new Ground.Drained(c, phi)
                : probed ? new Ground.Penetrometer(readings) : new Ground.Undrained(su);
    }

    private static List<Double> readings(@Nullable List<String> given, Spot at) {
        List<Double> readings = new ArrayList<>();
        for (int i = 0; given != null && i < given.size(); i++) {
            readings.add(new Text(at.element(i), "reading", given.get(i), true).quantity(Range.SOIL_PRESSURE));
        }
        return readings;
    }

    /** Made at once only where it makes sense: after a fault it is never asked for. */
    private static Ground.Weight weight(GroundStrength given, Spot at) {
        double unit = at.text("unitWeight", given.getUnitWeight()).quantity(Range.UNIT_WEIGHT);
        Text saturated = at.text("saturatedUnitWeight", given.getSaturatedUnitWeight());
        double wet = saturated.quantityOr(Range.UNIT_WEIGHT, Double.NaN);
        double water = at.text("waterDepth", given.getWaterDepth()).quantityOr(Range.FOUNDING_DEPTH, Double.NaN);
        boolean light = wet <= GroundWater.WATER;
        if (light) {
            saturated.spot().report(Messages.SATURATED_TOO_LIGHT, saturated.value());
        }
        return new Ground.Weight(unit > 0 ? unit : 1, light ? Double.NaN : wet, water);
    }
}
