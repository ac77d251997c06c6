package dev.underprop.wire.meaning;

import dev.underprop.api.model.LateralForce;
import dev.underprop.engine.plan.Lateral;
import dev.underprop.wire.fault.Fault;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the sideways loads that the engineer of the job gives. After a fault was reported, nothing is known of them. */
final class LateralReader {

    private LateralReader() {}

    static Lateral read(dev.underprop.api.model.@Nullable Lateral lateral, Spot at) {
        if (lateral == null) {
            return new Lateral.Unstated();
        }
        boolean said = at.text("by", lateral.getBy()).said();
        boolean none = Boolean.TRUE.equals(lateral.getNone());
        boolean given = lateral.getForces() != null;
        List<Lateral.Force> forces = forces(lateral.getForces(), at.member("forces"));
        if (none && given) {
            at.report(Messages.LATERAL_TWO_WAYS, "");
        } else if (!none && !given) {
            at.report(Messages.LATERAL_UNSTATED, "");
        } else if (said) {
            return none ? new Lateral.None(lateral.getBy()) : new Lateral.Given(lateral.getBy(), forces);
        }
        return new Lateral.Unstated();
    }

    private static List<Lateral.Force> forces(@Nullable List<LateralForce> forces, Spot at) {
        if (forces == null) {
            return List.of();
        }
        NameTable<LateralForce> names = new NameTable<>("sideways force");
        List<Lateral.Force> read = new ArrayList<>();
        for (int i = 0; i < forces.size(); i++) {
            LateralForce force = forces.get(i);
            Spot spot = at.element(i);
            names.add(force.getName(), force, spot.member("name"));
            force(force, spot).ifPresent(read::add);
        }
        boolean nothing = read.stream().allMatch(force -> force.along() == 0 && force.across() == 0);
        if (nothing && read.size() == forces.size()) {
            at.report(Messages.LATERAL_ZERO, "");
        }
        return read;
    }

    private static Optional<Lateral.Force> force(LateralForce force, Spot at) {
        Text along = at.text("along", force.getAlong());
        Text across = at.text("across", force.getAcross());
        double inX = along.quantityOr(Range.POINT_LOAD, 0);
        double inY = across.quantityOr(Range.POINT_LOAD, 0);
        Optional<String> origin = at.text("origin", force.getOrigin()).choice(List.of("wind", "seismic"));
        if (!along.given() && !across.given()) {
            at.report(Messages.LATERAL_FORCE_EMPTY, "", Fault.shown(force.getName()));
            return Optional.empty();
        }
        return Double.isNaN(inX + inY)
                ? Optional.empty()
                : origin.map(word -> new Lateral.Force(force.getName(), origin(word), inX, inY));
    }

    private static Lateral.Origin origin(String word) {
        return word.equals("wind") ? Lateral.Origin.WIND : Lateral.Origin.SEISMIC;
    }
}
