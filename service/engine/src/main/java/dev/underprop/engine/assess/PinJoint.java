package dev.underprop.engine.assess;

import dev.underprop.engine.check.Working;
import dev.underprop.engine.clause.aisc360_16.SectionF11;
import dev.underprop.engine.clause.aisc360_16.SectionJ3;
import dev.underprop.engine.clause.aisc360_16.SectionJ4;
import dev.underprop.engine.clause.aisc360_16.SectionJ7;
import dev.underprop.engine.plan.Telescope;
import dev.underprop.engine.standard.Dimension;
import java.util.List;

/** What the joints of a telescopic post bear: the pin through both tubes, the thread of the screw. */
final class PinJoint {

    /**
     * One way to fail.
     *
     * @param name in words
     * @param capacity (N)
     */
    record Limit(String name, double capacity) {}

    private PinJoint() {}

    /** One pin takes all: where there are more, play lets one bear before the others. */
    static List<Limit> pin(Telescope post, Telescope.Pin pin, Working working) {
        double strength = working.plan("Fu", "tensile strength of the pin", Dimension.STRESS, pin.strength());
        double d = working.plan("dp", "diameter of the pin", Dimension.LENGTH, pin.diameter());
        working.plan("Fyp", "yield stress of the pin", Dimension.STRESS, pin.yield());
        double stress =
                working.rule(SectionJ3.shearStress(strength), "shear stress of the pin", Dimension.STRESS, "0.45 × Fu");
        double shear = working.rule(
                "P1", SectionJ3.shear(stress, d, 2), "shear of the pin", Dimension.FORCE, "Fnv × π / 4 × dp^2 × 2 / 2");
        return List.of(
                new Limit("shear of the pin", shear),
                new Limit("bending of the pin", bending(post, pin, working)),
                new Limit("the pin bearing on the outer tube", bearing("3", "outer", post.outer(), pin, working)),
                new Limit("the pin bearing on the inner tube", bearing("4", "inner", post.inner(), pin, working)));
    }

    private static double bearing(String mark, String name, Telescope.Part part, Telescope.Pin pin, Working working) {
        double yield = Math.min(part.yield(), pin.yield());
        working.plan("Fy" + mark, "yield stress, " + name + " tube", Dimension.STRESS, part.yield());
        working.plan(
                "t" + mark,
                "wall, " + name + " tube",
                Dimension.LENGTH,
                part.tube().wall());
        return working.rule(
                "P" + mark,
                SectionJ7.bearing(yield, pin.diameter(), 2 * part.tube().wall()),
                "the pin bearing on the " + name + " tube",
                Dimension.FORCE,
                "1.8 × min( Fy# , Fyp ) × dp × 2 × t# / 2".replace("#", mark));
    }

    /** Half of the load from the middle of one wall to the middle of the other, all play of the tubes on this side. */
    private static double bending(Telescope post, Telescope.Pin pin, Working working) {
        working.plan(
                "to", "wall, outer tube", Dimension.LENGTH, post.outer().tube().wall());
        working.plan(
                "ti", "wall, inner tube", Dimension.LENGTH, post.inner().tube().wall());
        working.plan("cl", "clearance between the tubes", Dimension.LENGTH, post.clearance());
        double lever = working.step(
                "g",
                "lever, all play on one side",
                Dimension.LENGTH,
                post.outer().tube().wall() / 2
                        + post.clearance()
                        + post.inner().tube().wall() / 2,
                "to / 2 + cl + ti / 2");
        double moment = working.rule(
                "Mp",
                SectionF11.round(pin.yield(), pin.diameter()),
                "allowable moment of the pin",
                Dimension.MOMENT,
                "min( Fyp × dp^3 / 6 , 1.6 × Fyp × π × dp^3 / 32 ) / 1.67");
        return working.step("P2", "bending of the pin", Dimension.FORCE, 2 * moment / lever, "2 × Mp / g");
    }

    /** Threads shear over half of the cylinder at the root; of screw and nut the weaker steel. From memory, no standard. */
    static Limit thread(Telescope.Screw screw, Working working) {
        working.plan("dr", "root of the thread", Dimension.LENGTH, screw.root());
        working.plan("le", "thread engaged", Dimension.LENGTH, screw.engaged());
        working.plan("Fys", "yield stress of the screw", Dimension.STRESS, screw.yield());
        working.plan("Fyn", "yield stress of the nut", Dimension.STRESS, screw.nutYield());
        double area = working.step(
                "At",
                "half of the cylinder at the root",
                Dimension.AREA,
                Math.PI * screw.root() * screw.engaged() / 2,
                "π × dr × le / 2");
        double yield = Math.min(screw.yield(), screw.nutYield());
        double capacity = working.rule(
                "P5",
                SectionJ4.shear(yield, area),
                "shear of the thread",
                Dimension.FORCE,
                "0.6 × min( Fys , Fyn ) × At / 1.5");
        return new Limit("shear of the thread", capacity);
    }
}
