package dev.underprop.wire.meaning;

import dev.underprop.api.model.Tube;
import dev.underprop.engine.plan.PostType;
import dev.underprop.engine.section.RoundTube;
import dev.underprop.wire.fault.Messages;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Reads the tube of a post. The supplier is to be asked only when the plan has no fault. */
final class TubeReader {

    private TubeReader() {}

    static Supplier<PostType.Tube> read(@Nullable Tube tube, Spot at) {
        if (tube == null) {
            return PostType.NoTube::new;
        }
        double diameter = at.text("diameter", tube.getDiameter()).quantity(Range.THICKNESS);
        double wall = at.text("wall", tube.getWall()).quantity(Range.PLATE);
        double yield = at.text("yieldStress", tube.getYieldStress()).quantity(Range.YIELD);
        double off = at.text("eccentricity", tube.getEccentricity())
                .quantityOr(Range.ECCENTRICITY, PostType.Pipe.ECCENTRICITY);
        if (wall > diameter / 2) {
            at.member("wall").report(Messages.WALL_TOO_THICK, tube.getWall());
        }
        boolean plain = Boolean.TRUE.equals(tube.getPlain());
        return () -> new PostType.Pipe(new RoundTube(diameter, wall), yield, off, plain);
    }
}
