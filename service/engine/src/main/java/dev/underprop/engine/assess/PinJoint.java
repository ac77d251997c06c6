package dev.underprop.engine.assess;

import dev.underprop.engine.clause.aisc360_16.SectionF11;
import dev.underprop.engine.clause.aisc360_16.SectionJ3;
import dev.underprop.engine.clause.aisc360_16.SectionJ4;
import dev.underprop.engine.clause.aisc360_16.SectionJ7;
import dev.underprop.engine.plan.Telescope;
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
    static List<Limit> pin(Telescope post, Telescope.Pin pin) {
        double stress = SectionJ3.shearStress(pin.strength()).value();
        double d = pin.diameter();
        return List.of(
                new Limit("shear of the pin", SectionJ3.shear(stress, d, 2).value()),
                new Limit("bending of the pin", bending(post, pin)),
                new Limit("the pin bearing on the outer tube", bearing(post.outer(), pin)),
                new Limit("the pin bearing on the inner tube", bearing(post.inner(), pin)));
    }

    private static double bearing(Telescope.Part part, Telescope.Pin pin) {
        double yield = Math.min(part.yield(), pin.yield());
        return SectionJ7.bearing(yield, pin.diameter(), 2 * part.tube().wall()).value();
    }

    /** Half of the load from the middle of one wall to the middle of the other, all play of the tubes on this side. */
    private static double bending(Telescope post, Telescope.Pin pin) {
        double lever = post.outer().tube().wall() / 2
                + post.clearance()
                + post.inner().tube().wall() / 2;
        return 2 * SectionF11.round(pin.yield(), pin.diameter()).value() / lever;
    }

    /** Threads shear over half of the cylinder at the root; of screw and nut the weaker steel. From memory, no standard. */
    static Limit thread(Telescope.Screw screw) {
        double area = Math.PI * screw.root() * screw.engaged() / 2;
        double yield = Math.min(screw.yield(), screw.nutYield());
        return new Limit("shear of the thread", SectionJ4.shear(yield, area).value());
    }
}
