package dev.underprop.wire.meaning;

import dev.underprop.api.model.Crib;
import dev.underprop.api.model.Mat;
import dev.underprop.api.model.Pad;
import dev.underprop.api.model.SpreadPlate;
import dev.underprop.engine.plan.Member;
import dev.underprop.engine.plan.Pad.Block;
import dev.underprop.engine.plan.Pad.Cast;
import dev.underprop.engine.plan.Pad.Make;
import dev.underprop.engine.plan.Pad.Plate;
import dev.underprop.engine.plan.Pad.Rated;
import dev.underprop.engine.plan.Pad.SlabPart;
import dev.underprop.engine.plan.Pad.Stack;
import dev.underprop.engine.plan.Pad.Stands;
import dev.underprop.engine.plan.Pad.Unmade;
import dev.underprop.wire.fault.Messages;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Reads what the strength of a pad comes from. What does not go with its kind and make is a fault, never passed over. */
final class PadMakeReader {

    private static final String CAST = "cast";
    private static final String SOLID = "solid block";
    private static final String HOLLOW = "hollow block";

    private final String kind;
    private final Text made;
    private final String make;
    private final Text strength;
    private final Text rating;
    private final Text source;
    private final Text yield;
    private final Text measured;
    private final Text stands;
    private final Spot crib;
    private final Spot mat;

    private PadMakeReader(Pad pad, String kind, Spot at) {
        this.kind = kind;
        this.made = at.text("make", pad.getMake());
        this.make = made.given() ? made.choice(List.of(CAST, SOLID, HOLLOW)).orElse("") : "";
        this.strength = at.text("strength", pad.getStrength());
        this.rating = at.text("rating", pad.getRating());
        this.source = at.text("ratingSource", pad.getRatingSource());
        this.yield = at.text("yieldStress", pad.getYieldStress());
        this.measured = at.text("thicknessMeasured", pad.getThicknessMeasured());
        this.stands = at.text("stands", pad.getStands());
        this.crib = at.member("crib");
        this.mat = at.member("mat");
    }

    /**
     * The supplier is to be asked only when the plan has no fault.
     *
     * @param kind of the pad, empty where a fault was reported of it
     */
    static Supplier<Make> read(Pad pad, String kind, TimberReader timber, Spot at) {
        PadMakeReader reader = new PadMakeReader(pad, kind, at);
        if (!kind.isEmpty()) {
            reader.reportForeign(pad.getMat() != null, pad.getCrib() != null);
        }
        return reader.read(reader.mat(pad.getMat(), timber), pad.getCrib());
    }

    private void reportForeign(boolean matted, boolean cribbed) {
        boolean concrete = kind.equals("concrete");
        boolean slab = kind.equals("slab");
        own(made, concrete);
        own(strength, concrete || slab);
        own(yield, kind.equals("steel"));
        own(measured, slab);
        own(stands, slab);
        boolean stock = concrete ? !make.equals(CAST) : !slab && !kind.equals("crib");
        own(rating, stock);
        own(source, stock || rating.given());
        if (cribbed && !kind.equals("crib")) {
            crib.report(Messages.PAD_FOREIGN, "", "crib");
        }
        if (matted && !kind.equals("timber")) {
            mat.report(Messages.PAD_FOREIGN, "", "mat");
        }
        if (rating.given() != source.given()) {
            Text missing = rating.given() ? source : rating;
            missing.spot().report(Messages.PAD_RATING_INCOMPLETE, "", missing.name());
        }
        boolean own = kind.equals("steel") && yield.given() || kind.equals("timber") && matted;
        if (rating.given() && own) {
            rating.spot().report(Messages.PAD_TWO_WAYS, rating.value());
        }
    }

    private static void own(Text text, boolean fits) {
        if (text.given() && !fits) {
            text.spot().report(Messages.PAD_FOREIGN, text.value(), text.name());
        }
    }

    private Supplier<Make> read(Supplier<Make> sleepers, @Nullable Crib crib) {
        double f = strength.quantityOr(Range.STRENGTH, Double.NaN);
        double load = rating.quantityOr(Range.CAPACITY, Double.NaN);
        double fy = yield.quantityOr(Range.YIELD, Double.NaN);
        boolean rated = source.said() && rating.given();
        String how = measured.said() ? measured.value().strip() : "";
        Stands where = stands();
        Supplier<Make> stack = stack(crib);
        return switch (kind) {
            case "concrete" -> () -> concrete(f, load, rated);
            case "slab" -> () -> new SlabPart(f, how, where);
            case "crib" -> stack;
            case "steel" -> () -> yield.given() ? new Plate(fy) : stock(load, rated);
            default -> () -> rated ? stock(load, true) : sleepers.get();
        };
    }

    /** A rating of what may be hollow is none. */
    private Make concrete(double f, double load, boolean rated) {
        return switch (make) {
            case CAST -> new Cast(f);
            case SOLID -> rated ? new Rated(load, source.value(), f) : new Block(false, f);
            case HOLLOW -> new Block(true, f);
            default -> new Unmade(f);
        };
    }

    private Make stock(double load, boolean rated) {
        return rated ? new Rated(load, source.value(), Double.NaN) : new Unmade();
    }

    private Stands stands() {
        return stands.given()
                ? stands.choice(List.of("interior", "edge", "corner"))
                        .map(word -> Stands.valueOf(word.toUpperCase(Locale.ROOT)))
                        .orElse(Stands.UNSTATED)
                : Stands.UNSTATED;
    }

    private Supplier<Make> stack(@Nullable Crib given) {
        if (given == null) {
            return Unmade::new;
        }
        double width = crib.text("width", given.getWidth()).quantity(Range.THICKNESS);
        double bearing = crib.text("bearing", given.getBearing()).quantity(Range.STRENGTH);
        Text who = crib.text("source", given.getSource());
        boolean said = who.said();
        boolean solid = Boolean.TRUE.equals(given.getSolidEnds());
        return () -> said ? new Stack(given.getTimbers(), width, bearing, who.value(), solid) : new Unmade();
    }

    private Supplier<Make> mat(@Nullable Mat given, TimberReader timber) {
        if (given == null) {
            return Unmade::new;
        }
        Optional<String> run = mat.text("run", given.getRun()).choice(List.of("along", "across"));
        Optional<Member> one = timber.read(TimberText.of(given, mat), 1);
        Integer count = given.getBearers();
        int bearers = count == null ? 0 : count;
        Supplier<dev.underprop.engine.plan.Pad.Spread> spread = spread(given.getPlate(), mat.member("plate"));
        return () -> new dev.underprop.engine.plan.Pad.Mat(
                one.orElseThrow(),
                given.getSleepers(),
                bearers,
                run.orElseThrow().equals("along"),
                spread.get());
    }

    private static Supplier<dev.underprop.engine.plan.Pad.Spread> spread(@Nullable SpreadPlate plate, Spot at) {
        if (plate == null) {
            return dev.underprop.engine.plan.Pad.NoSpread::new;
        }
        double along = at.text("along", plate.getAlong()).quantity(Range.THICKNESS);
        double across = at.text("across", plate.getAcross()).quantity(Range.THICKNESS);
        double thickness = at.text("thickness", plate.getThickness()).quantity(Range.PLATE);
        double fy = at.text("yieldStress", plate.getYieldStress()).quantity(Range.YIELD);
        return () -> new dev.underprop.engine.plan.Pad.SpreadPlate(along, across, thickness, fy);
    }
}
