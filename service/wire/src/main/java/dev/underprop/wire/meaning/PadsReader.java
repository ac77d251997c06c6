package dev.underprop.wire.meaning;

import dev.underprop.api.model.Pad;
import dev.underprop.engine.plan.Pad.Anywhere;
import dev.underprop.engine.plan.Pad.Make;
import dev.underprop.engine.plan.Pad.Within;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Reads the pads. The supplier is to be asked only when the plan has no fault. */
final class PadsReader {

    private static final List<String> KINDS = List.of("concrete", "timber", "steel", "slab", "crib");

    /** Normal-weight concrete, 150 pcf (N/m3): common practice, no source. */
    private static final double CONCRETE = 150 * 4.4482216152605 / (0.3048 * 0.3048 * 0.3048);

    private PadsReader() {}

    static NameTable<Supplier<dev.underprop.engine.plan.Pad>> read(
            @Nullable List<Pad> pads, TimberReader timber, Spot spot) {
        NameTable<Supplier<dev.underprop.engine.plan.Pad>> table = new NameTable<>("pad");
        for (int i = 0; pads != null && i < pads.size(); i++) {
            Spot at = spot.element(i);
            table.add(pads.get(i).getName(), draft(pads.get(i), timber, at), at.member("name"));
        }
        return table;
    }

    static Supplier<dev.underprop.engine.plan.Pad> draft(Pad pad, TimberReader timber, Spot at) {
        Optional<String> kind = at.text("kind", pad.getKind()).choice(KINDS);
        double along = at.text("along", pad.getAlong()).quantity(Range.THICKNESS);
        double across = at.text("across", pad.getAcross()).quantity(Range.THICKNESS);
        double thickness = at.text("thickness", pad.getThickness()).quantity(Range.THICKNESS);
        Supplier<Make> make = PadMakeReader.read(pad, kind.orElse(""), timber, at);
        double centring = at.text("centring", pad.getCentring()).quantityOr(Range.CENTRING, Double.NaN);
        Text unitWeight = at.text("unitWeight", pad.getUnitWeight());
        double stated = unitWeight.quantityOr(Range.UNIT_WEIGHT, 0);
        return () -> new dev.underprop.engine.plan.Pad(
                pad.getName(),
                dev.underprop.engine.plan.Pad.Kind.valueOf(kind.orElseThrow().toUpperCase(Locale.ROOT)),
                along,
                across,
                thickness,
                weight(kind.orElseThrow(), unitWeight.given(), stated),
                make.get(),
                Double.isNaN(centring) ? new Anywhere() : new Within(centring));
    }

    private static dev.underprop.engine.plan.Pad.Weight weight(String kind, boolean given, double stated) {
        if (given) {
            return new dev.underprop.engine.plan.Pad.Known(stated, true);
        }
        return kind.equals("concrete")
                ? new dev.underprop.engine.plan.Pad.Known(CONCRETE, false)
                : new dev.underprop.engine.plan.Pad.Unknown();
    }
}
