package dev.underprop.wire.meaning;

import dev.underprop.api.model.Cut;
import dev.underprop.engine.plan.Excavation;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads where the ground is cut. After a fault was reported, nothing is known of it. */
final class ExcavationReader {

    private ExcavationReader() {}

    static Excavation read(dev.underprop.api.model.@Nullable Excavation excavation, Spot at) {
        if (excavation == null) {
            return new Excavation.Unstated();
        }
        boolean none = Boolean.TRUE.equals(excavation.getNone());
        boolean given = excavation.getCuts() != null;
        List<Excavation.Cut> cuts = cuts(excavation.getCuts(), at.member("cuts"));
        if (none && given) {
            at.report(Messages.EXCAVATION_TWO_WAYS, "");
        } else if (none) {
            return new Excavation.None();
        } else if (given) {
            return new Excavation.Cuts(cuts);
        } else {
            at.report(Messages.EXCAVATION_UNSTATED, "");
        }
        return new Excavation.Unstated();
    }

    private static List<Excavation.Cut> cuts(@Nullable List<Cut> cuts, Spot at) {
        NameTable<Cut> names = new NameTable<>("cut");
        List<Excavation.Cut> read = new ArrayList<>();
        for (int i = 0; cuts != null && i < cuts.size(); i++) {
            Spot spot = at.element(i);
            names.add(cuts.get(i).getName(), cuts.get(i), spot.member("name"));
            cut(cuts.get(i), spot).ifPresent(read::add);
        }
        return read;
    }

    private static Optional<Excavation.Cut> cut(Cut cut, Spot at) {
        double[] x = LoadsReader.extent(at.text("fromX", cut.getFromX()), at.text("toX", cut.getToX()));
        double[] y = LoadsReader.extent(at.text("fromY", cut.getFromY()), at.text("toY", cut.getToY()));
        double depth = at.text("depth", cut.getDepth()).quantity(Range.CUT_DEPTH);
        boolean known = x[1] > x[0] && y[1] > y[0] && depth > 0;
        return known ? Optional.of(new Excavation.Cut(cut.getName(), x[0], x[1], y[0], y[1], depth)) : Optional.empty();
    }
}
