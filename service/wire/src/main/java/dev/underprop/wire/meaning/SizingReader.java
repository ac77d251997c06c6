package dev.underprop.wire.meaning;

import dev.underprop.api.model.PadSizingRequest;
import dev.underprop.engine.pad.PadChecks;
import dev.underprop.engine.plan.Excavation;
import dev.underprop.engine.plan.Ground;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Limits;
import dev.underprop.engine.sizing.Loaded;
import dev.underprop.engine.sizing.Objective;
import dev.underprop.engine.sizing.Task;
import dev.underprop.wire.catalogue.Catalogue;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Reads what a request for pads means. Every fault is told at once. */
public final class SizingReader {

    private final PlanReader plans;

    /**
     * @param catalogue the tables to look up
     */
    public SizingReader(Catalogue catalogue) {
        this.plans = new PlanReader(catalogue);
    }

    /**
     * Reads one request.
     *
     * @param model a model within the contract's limits
     */
    public SizingReading read(PadSizingRequest model) {
        Findings findings = new Findings();
        Spot root = new Spot("", findings);
        Optional<Objective> objective = WishReader.objective(root.text("objective", model.getObjective()));
        StockReader stock = new StockReader(plans.timber(), objective.orElse(Objective.AREA) == Objective.COST);
        readStock(model, root, stock);
        if (model.getPlan() != null && model.getLoads() != null) {
            root.member("loads").report(Messages.POSTS_TWO_WAYS, "");
        } else if (model.getPlan() == null && model.getLoads() == null) {
            root.report(Messages.POSTS_UNSTATED, "");
        }
        return model.getPlan() != null ? ofPlan(model, root, stock, objective) : ofLoads(model, root, stock, objective);
    }

    /** The stock, or the pads of the plan. */
    private static void readStock(PadSizingRequest model, Spot root, StockReader stock) {
        if (model.getStock() == null && model.getPlan() != null) {
            stock.readPads(WishReader.own(model.getPlan()), root.member("plan").member("pads"));
        } else {
            stock.read(model.getStock() == null ? List.of() : model.getStock(), root.member("stock"));
        }
    }

    private SizingReading ofPlan(PadSizingRequest model, Spot root, StockReader stock, Optional<Objective> objective) {
        foreign(model.getBasePlate(), root.member("basePlate"));
        foreign(model.getExcavation(), root.member("excavation"));
        foreign(model.getLimits(), root.member("limits"));
        foreign(model.getEccentricity(), root.member("eccentricity"));
        if (model.getPlan().getSizing() != null) {
            root.member("plan").member("sizing").report(Messages.SIZING_TWICE, "");
        }
        boolean ground = model.getGround() != null;
        if (ground && model.getPlan().getGround() != null) {
            root.member("ground").report(Messages.SITE_TWICE, "", "ground");
        }
        Supplier<Ground> own = GroundReader.read(model.getGround(), root.member("ground"));
        PlanReading reading = plans.read(model.getPlan(), root.member("plan"));
        if (reading instanceof PlanReading.Refused refused) {
            return new SizingReading.Refused(refused.faults());
        }
        PlanReading.Understood understood = (PlanReading.Understood) reading;
        JobPlan plan = understood.plan();
        JobPlan whole = ground
                ? new JobPlan(
                        plan.basis(), plan.floor(), plan.shores(), own.get(), plan.situations(), plan.circumstances())
                : plan;
        List<String> assumptions = new ArrayList<>(understood.assumptions());
        assumptions.addAll(Taken.ofFeet(whole, understood.assumptions()));
        assumptions.addAll(SizingTaken.of(whole.ground(), ground));
        assumptions.add(SizingTaken.TURNED);
        return new SizingReading.OfPlan(whole, stock.candidates(), objective.orElseThrow(), stock.pads(), assumptions);
    }

    private static void foreign(Object given, Spot at) {
        if (given != null) {
            at.report(Messages.SITE_FOREIGN, "", at.pointer().substring(1));
        }
    }

    private static SizingReading ofLoads(
            PadSizingRequest model, Spot root, StockReader stock, Optional<Objective> objective) {
        Supplier<Ground> ground = GroundReader.read(model.getGround(), root.member("ground"));
        Excavation excavation = ExcavationReader.read(model.getExcavation(), root.member("excavation"));
        Limits limits = LimitsReader.read(model.getLimits(), root.member("limits"));
        List<Supplier<Loaded>> posts = new PostLoadsReader(root, model, excavation, limits).read();
        if (!root.findings().isEmpty()) {
            return new SizingReading.Refused(root.findings().list());
        }
        PadChecks.Site site = new PadChecks.Site(ground.get(), excavation, limits.settlement());
        Task task =
                new Task(posts.stream().map(Supplier::get).toList(), site, stock.candidates(), objective.orElseThrow());
        List<String> assumptions = new ArrayList<>(SizingTaken.of(site.ground(), true));
        assumptions.addAll(SizingTaken.ofLoads(model, limits));
        return new SizingReading.Loads(task, stock.pads(), assumptions);
    }
}
