package dev.underprop.wire.meaning;

import dev.underprop.api.model.JobPlan;
import dev.underprop.api.model.PadWish;
import dev.underprop.api.model.StockPad;
import dev.underprop.engine.sizing.Objective;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads what a plan asks of pads besides being checked. */
final class WishReader {

    private static final List<String> OBJECTIVES = List.of("area", "weight", "cost");

    private final @Nullable PadWish wish;
    private final Optional<Objective> objective;
    private final StockReader stock;

    WishReader(TimberReader timber, JobPlan model, Spot root) {
        this.wish = model.getSizing();
        Spot at = root.member("sizing");
        this.objective = wish == null ? Optional.empty() : objective(at.text("objective", wish.getObjective()));
        this.stock = new StockReader(timber, objective.orElse(Objective.AREA) == Objective.COST);
        if (wish != null) {
            read(wish, model, root, at);
        }
    }

    static Optional<Objective> objective(Text text) {
        return text.choice(OBJECTIVES).map(word -> Objective.valueOf(word.toUpperCase(Locale.ROOT)));
    }

    private void read(PadWish wanted, JobPlan model, Spot root, Spot at) {
        if (wanted.getStock() != null) {
            stock.read(wanted.getStock(), at.member("stock"));
        } else {
            stock.readPads(own(model), root.member("pads"));
        }
    }

    /** The pads that the plan describes, one size each. */
    static List<StockPad> own(JobPlan model) {
        return model.getPads() == null
                ? List.of()
                : model.getPads().stream().map(pad -> new StockPad().pad(pad)).toList();
    }

    /** What is asked of a plan without faults; nothing where it asks nothing. */
    List<SizingReading.OfPlan> of(dev.underprop.engine.plan.JobPlan plan) {
        return wish == null
                ? List.of()
                : List.of(new SizingReading.OfPlan(
                        plan,
                        stock.candidates(),
                        objective.orElseThrow(),
                        stock.pads(),
                        Stream.concat(
                                        Taken.ofFeet(plan, List.of()).stream(),
                                        SizingTaken.of(plan.ground(), false).stream())
                                .toList()));
    }
}
