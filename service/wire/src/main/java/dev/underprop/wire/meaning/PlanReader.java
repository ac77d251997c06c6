package dev.underprop.wire.meaning;

import dev.underprop.api.model.JobPlan;
import dev.underprop.engine.load.LoadModel;
import dev.underprop.engine.plan.Circumstances;
import dev.underprop.engine.plan.Floor;
import dev.underprop.engine.plan.Load;
import dev.underprop.engine.plan.Pad;
import dev.underprop.engine.standard.Basis;
import dev.underprop.wire.catalogue.Catalogue;
import dev.underprop.wire.fault.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Reads what a plan means: quantities, names that refer to each other, geometry, tables. Every fault is told at once;
 * only whether each load finds something to carry it is asked after everything else is right, since it needs the whole.
 */
public final class PlanReader {

    private final TimberReader timber;

    /** Reads timber by the same tables. */
    TimberReader timber() {
        return timber;
    }

    /**
     * @param catalogue the tables to look up
     */
    public PlanReader(Catalogue catalogue) {
        this.timber = new TimberReader(catalogue);
    }

    /**
     * Reads one plan.
     *
     * @param model a model within the contract's limits
     */
    public PlanReading read(JobPlan model) {
        Findings findings = new Findings();
        return read(model, new Spot("", findings));
    }

    /** The same of a plan that stands at a place in a larger document, whose faults go with its own. */
    PlanReading read(JobPlan model, Spot root) {
        Findings findings = root.findings();
        List<ShoreDraft> shores = new ArrayList<>();
        PostsReader posts = posts(model, root);
        Supplier<dev.underprop.engine.plan.JobPlan> draft = draft(model, root, posts, shores);
        WishReader wish = new WishReader(timber, model, root);
        Optional<LiftDraft> lift = LiftReader.read(model, root.member("lift"), shores, posts);
        if (!findings.isEmpty()) {
            return new PlanReading.Refused(findings.list());
        }
        dev.underprop.engine.plan.JobPlan plan = draft.get();
        reportUncarried(plan, root.member("floor").member("loads"));
        PlanReading.Lift raised = lift.<PlanReading.Lift>map(l -> new PlanReading.Raised(l.request(plan)))
                .orElseGet(PlanReading.NoLift::new);
        return findings.isEmpty()
                ? new PlanReading.Understood(plan, Taken.from(model, plan), wish.of(plan), raised)
                : new PlanReading.Refused(findings.list());
    }

    private Supplier<dev.underprop.engine.plan.JobPlan> draft(
            JobPlan model, Spot root, PostsReader posts, List<ShoreDraft> known) {
        root.text("basis", model.getBasis()).choice(List.of(Basis.US_ASD.name()));
        Spot floor = root.member("floor");
        List<JoistDraft> joists =
                new JoistsReader(floor.member("joists"), model.getFloor().getJoists(), timber).read();
        NameTable<Integer> joistNames =
                NameTable.indexed("joist", joists.stream().map(JoistDraft::name).toList());
        SeatReader seats = new SeatReader(joists, joistNames);
        List<BearingDraft> bearings = new BearingsReader(
                        floor.member("bearings"), joists, seats, new GirderReader(timber))
                .read(model.getFloor().getBearings());
        List<ShoreDraft> shores =
                new ShoresReader(joists, seats, timber, posts).read(model.getShores(), root.member("shores"));
        known.addAll(shores);
        SeatSpacing.check(joists, bearings, shores);
        RemovalReader removals = new RemovalReader(joists, bearings);
        NameTable<Integer> shoreNames = named(
                "shore",
                shores.stream().map(ShoreDraft::name).toList(),
                shores.stream().map(ShoreDraft::spot).toList());
        List<Supplier<Load>> loads = new LoadsReader(joists, joistNames, shoreNames)
                .read(model.getFloor().getLoads(), floor.member("loads"));
        Floor.JoistWeight weight = joistWeight(model, floor.member("joists"));
        Supplier<dev.underprop.engine.plan.Ground> ground = GroundReader.read(model.getGround(), root.member("ground"));
        List<dev.underprop.engine.plan.Situation> situations =
                new SituationsReader(removals, posts(shores)).read(model.getSituations(), root.member("situations"));
        Circumstances circumstances = CircumstancesReader.read(model, root);
        return () -> new dev.underprop.engine.plan.JobPlan(
                Basis.US_ASD,
                new Floor(
                        joists.stream().map(JoistDraft::joist).toList(),
                        bearings.stream().map(BearingDraft::bearing).toList(),
                        loads.stream().map(Supplier::get).toList(),
                        weight),
                shores.stream().map(ShoreDraft::shore).toList(),
                ground.get(),
                situations,
                circumstances);
    }

    private PostsReader posts(JobPlan model, Spot root) {
        NameTable<PostTypesReader.Draft> types =
                new PostTypesReader(timber).read(model.getPostTypes(), root.member("postTypes"));
        NameTable<Supplier<Pad>> pads = PadsReader.read(model.getPads(), timber, root.member("pads"));
        return new PostsReader(types, pads);
    }

    private static Floor.JoistWeight joistWeight(JobPlan model, Spot spot) {
        Text text = spot.text("selfWeight", model.getFloor().getJoists().getSelfWeight());
        boolean added = text.given()
                && text.choice(List.of("included", "added")).orElse("").equals("added");
        return added ? Floor.JoistWeight.ADDED : Floor.JoistWeight.INCLUDED_IN_DEAD;
    }

    private static NameTable<Integer> named(String kind, List<String> names, List<Spot> spots) {
        NameTable<Integer> table = new NameTable<>(kind);
        for (int i = 0; i < names.size(); i++) {
            table.add(names.get(i), i, spots.get(i).member("name"));
        }
        return table;
    }

    private static NameTable<SituationsReader.Place> posts(List<ShoreDraft> shores) {
        NameTable<SituationsReader.Place> table = new NameTable<>("post");
        for (int s = 0; s < shores.size(); s++) {
            List<PostDraft> posts = shores.get(s).posts();
            for (int p = 0; p < posts.size(); p++) {
                PostDraft post = posts.get(p);
                table.add(
                        post.name(),
                        new SituationsReader.Place(s, p, post.gap()),
                        post.spot().member("name"));
            }
        }
        return table;
    }

    private static void reportUncarried(dev.underprop.engine.plan.JobPlan plan, Spot spot) {
        List<String> uncarried = new ArrayList<>(LoadModel.uncarried(plan));
        for (int i = 0; i < plan.floor().loads().size(); i++) {
            if (uncarried.contains(plan.floor().loads().get(i).name())) {
                spot.element(i)
                        .report(
                                Messages.LOAD_UNCARRIED,
                                plan.floor().loads().get(i).name());
            }
        }
    }
}
