package dev.underprop.wire.meaning;

import dev.underprop.api.model.TelescopePin;
import dev.underprop.api.model.TelescopeScrew;
import dev.underprop.api.model.TelescopeTube;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.plan.Telescope;
import dev.underprop.engine.section.RoundTube;
import dev.underprop.wire.fault.Messages;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Reads a telescopic post. The supplier is to be asked only when the plan has no fault. */
final class TelescopeReader {

    /** One tube as far as it was understood; NaN where a quantity was faulty or, of the yield stress, absent. */
    private record Tube(double diameter, double wall, double yield) {
        Telescope.Part part() {
            return new Telescope.Part(new RoundTube(diameter, wall), yield);
        }
    }

    private TelescopeReader() {}

    static Supplier<Telescope> read(dev.underprop.api.model.Telescope post, Spot at) {
        Tube outer = tube(post.getOuter(), at.member("outer"));
        Tube inner = tube(post.getInner(), at.member("inner"));
        if (inner.diameter >= outer.diameter - 2 * outer.wall) {
            at.member("inner")
                    .member("diameter")
                    .report(Messages.INNER_TUBE_TOO_WIDE, post.getInner().getDiameter());
        }
        double length = at.text("outerLength", post.getOuterLength()).quantity(Range.HEIGHT);
        double overlap = at.text("overlap", post.getOverlap()).quantity(Range.HEIGHT);
        if (overlap > length) {
            at.member("overlap").report(Messages.OVERLAP_TOO_LONG, post.getOverlap());
        }
        double off = at.text("eccentricity", post.getEccentricity())
                .quantityOr(Range.ECCENTRICITY, PostType.Pipe.ECCENTRICITY);
        Supplier<Telescope.Joint> pin = pin(post.getPin(), at.member("pin"));
        Supplier<Telescope.Thread> thread = thread(post, at);
        return () -> new Telescope(outer.part(), inner.part(), length, overlap, off, pin.get(), thread.get());
    }

    private static Tube tube(TelescopeTube tube, Spot at) {
        double diameter = at.text("diameter", tube.getDiameter()).quantity(Range.THICKNESS);
        double wall = at.text("wall", tube.getWall()).quantity(Range.PLATE);
        double yield = at.text("yieldStress", tube.getYieldStress()).quantityOr(Range.YIELD, Double.NaN);
        if (wall > diameter / 2) {
            at.member("wall").report(Messages.WALL_TOO_THICK, tube.getWall());
        }
        return new Tube(diameter, wall, yield);
    }

    private static Supplier<Telescope.Joint> pin(@Nullable TelescopePin pin, Spot at) {
        if (pin == null) {
            return Telescope.NoPin::new;
        }
        double diameter = at.text("diameter", pin.getDiameter()).quantity(Range.PLATE);
        double hole = at.text("hole", pin.getHole()).quantity(Range.PLATE);
        double yield = at.text("yieldStress", pin.getYieldStress()).quantity(Range.YIELD);
        double strength = at.text("tensileStrength", pin.getTensileStrength()).quantity(Range.YIELD);
        if (hole < diameter) {
            at.member("hole").report(Messages.HOLE_TOO_NARROW, pin.getHole());
        }
        if (strength < yield) {
            at.member("tensileStrength").report(Messages.STRENGTH_BELOW_YIELD, pin.getTensileStrength());
        }
        return () -> new Telescope.Pin(diameter, hole, yield, strength);
    }

    private static Supplier<Telescope.Thread> thread(dev.underprop.api.model.Telescope post, Spot at) {
        boolean none = Boolean.TRUE.equals(post.getNoScrew());
        if (post.getScrew() == null) {
            return none ? Telescope.NoScrew::new : Telescope.UnstatedScrew::new;
        }
        if (none) {
            at.member("noScrew").report(Messages.SCREW_TWO_WAYS, "");
        }
        return screw(post.getScrew(), at.member("screw"));
    }

    private static Supplier<Telescope.Thread> screw(TelescopeScrew screw, Spot at) {
        boolean foot = at.text("at", screw.getAt())
                .choice(List.of("head", "foot"))
                .orElse("")
                .equals("foot");
        double root = at.text("root", screw.getRoot()).quantity(Range.PLATE);
        double yield = at.text("yieldStress", screw.getYieldStress()).quantity(Range.YIELD);
        double nut = at.text("nutYieldStress", screw.getNutYieldStress()).quantity(Range.YIELD);
        double exposed = at.text("exposed", screw.getExposed()).quantity(Range.SCREW);
        double engaged = at.text("engaged", screw.getEngaged()).quantity(Range.SCREW);
        double play = at.text("play", screw.getPlay()).quantity(Range.FIT_UP);
        return () -> new Telescope.Screw(foot, root, yield, nut, exposed, engaged, play);
    }
}
