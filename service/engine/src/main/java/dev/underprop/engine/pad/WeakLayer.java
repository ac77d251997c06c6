package dev.underprop.engine.pad;

import dev.underprop.engine.check.CheckResult.Finding;
import dev.underprop.engine.check.CheckResult.Judged;
import dev.underprop.engine.check.Measure;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.soil.Layers;
import dev.underprop.engine.soil.Stress;

/**
 * A weaker layer below a pad: the load spreads by 1 in 2 on its way down to it. Where clay of known strength lies on it, the pad
 * may also punch a block through, held by the clay around it. Each pad is judged alone;
 * what pads bring on the layer together is judged with their places.
 */
final class WeakLayer {

    private WeakLayer() {}

    /** @param own what the ground right under the pad makes of the same pressure */
    static Finding judge(Ground.Layered ground, Tread tread, Finding own) {
        if (!(own instanceof Judged above)) {
            return own;
        }
        double pressure = tread.pressure();
        double spread = Stress.spread(pressure * tread.area(), tread.along(), tread.across(), ground.depth())
                .value();
        Judged worst = Worst.of(above, new Judged(Measure.PRESSURE, spread, ground.pressure()));
        return punched(ground, tread) > 0
                ? Worst.of(worst, new Judged(Measure.PRESSURE, pressure, punched(ground, tread)))
                : worst;
    }

    /** Pressure (Pa) at which a block would be allowed to bear on the weaker layer, 0 where the upper is not known as clay. */
    private static double punched(Ground.Layered ground, Tread tread) {
        if (!(ground.top() instanceof Ground.Strength upper) || GroundStrength.undrained(upper) <= 0) {
            return 0;
        }
        double sides = Layers.sides(GroundStrength.undrained(upper), tread.along(), tread.across(), ground.depth())
                .value();
        return ground.pressure() + sides / upper.safety();
    }
}
