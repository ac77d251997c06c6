package dev.underprop.engine.pad;

import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.soil.ElasticSettlement;
import dev.underprop.engine.standard.Citation;
import dev.underprop.engine.standard.Cited;

/**
 * How far a pad sinks into the ground under its load: modulus of subgrade reaction times area, or a rigid pad on elastic ground
 * where the plan gives an elastic modulus. The pad itself is rigid.
 */
public final class GroundStiffness {

    static final Citation ELASTIC = ElasticSettlement.stiffness(1, 1, 1, 0).citation();

    private GroundStiffness() {}

    /** Spring of a rigid pad on elastic ground, over E/(1 - nu²) (m). */
    static double rigid(Pad pad) {
        double breadth = Math.min(pad.along(), pad.across());
        double length = Math.max(pad.along(), pad.across());
        return ElasticSettlement.stiffness(breadth, length, 1, 0).value();
    }

    /**
     * Soft and stiff spring of a pad on its ground. What the plan gives holds; else the range of the class of undisturbed
     * ground; else the widest range of the table, and its name says so.
     */
    public static Spring of(Ground ground, Pad pad) {
        if (ground.givesAs() instanceof Ground.Elastic elastic) {
            return elastic(elastic, pad);
        }
        Subgrade range = Subgrade.of(ground);
        return new Spring(range.soft() * pad.area(), range.stiff() * pad.area(), range.name(), range.citation());
    }

    /** Whether the range is more than the widest there is. */
    public static boolean known(Ground ground) {
        return ground.givesAs() instanceof Ground.Elastic || Subgrade.of(ground).known();
    }

    /** Where the range stands. */
    static Citation citation(Ground ground) {
        return ground.givesAs() instanceof Ground.Elastic
                ? ELASTIC
                : Subgrade.of(ground).citation();
    }

    private static Spring elastic(Ground.Elastic ground, Pad pad) {
        double breadth = Math.min(pad.along(), pad.across());
        double length = Math.max(pad.along(), pad.across());
        Cited soft = ElasticSettlement.stiffness(breadth, length, ground.soft(), ground.poisson());
        Cited stiff = ElasticSettlement.stiffness(breadth, length, ground.stiff(), ground.poisson());
        return new Spring(
                soft.value(),
                stiff.value(),
                "rigid pad on elastic ground of the modulus that the plan gives",
                soft.citation());
    }
}
