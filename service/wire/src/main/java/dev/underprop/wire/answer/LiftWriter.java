package dev.underprop.wire.answer;

import dev.underprop.api.model.BasisEditions;
import dev.underprop.api.model.BearingPart;
import dev.underprop.api.model.DocumentKind;
import dev.underprop.api.model.LiftCount;
import dev.underprop.api.model.LiftHelp;
import dev.underprop.api.model.LiftObstacle;
import dev.underprop.api.model.LiftOutcome;
import dev.underprop.api.model.LiftPointResult;
import dev.underprop.api.model.LiftPostResult;
import dev.underprop.api.model.LiftRelease;
import dev.underprop.api.model.LiftRemark;
import dev.underprop.api.model.LiftRemarkKind;
import dev.underprop.api.model.LiftSituation;
import dev.underprop.api.model.PostLift;
import dev.underprop.engine.lift.LiftPlan;
import dev.underprop.engine.lift.LiftRequest;
import dev.underprop.engine.plan.Bearing;
import dev.underprop.engine.plan.Girder;
import dev.underprop.engine.plan.Situation;
import dev.underprop.wire.quantity.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Writes the answer to a lift. */
public final class LiftWriter {

    private final Question question;
    private final LiftRequest request;
    private final LiftPlan plan;
    private final Figures figures;
    private final LiftStages stages;

    /**
     * @param question what was asked
     * @param request the lift that was asked for
     * @param plan what the engine found
     */
    public LiftWriter(Question question, LiftRequest request, LiftPlan plan) {
        this.question = question;
        this.request = request;
        this.plan = plan;
        this.figures = new Figures(question.units());
        this.stages = new LiftStages(question.plan(), request, figures);
    }

    /** The lift plan. */
    public dev.underprop.api.model.LiftPlan write() {
        dev.underprop.api.model.LiftPlan model = new dev.underprop.api.model.LiftPlan()
                .document(DocumentKind.LIFT_PLAN)
                .engine(AnswerWriter.engine())
                .basis(new BasisEditions()
                        .name(question.plan().basis().name())
                        .editions(question.plan().basis().editions()))
                .planDigest(question.planDigest())
                .catalogueDigest(question.catalogueDigest())
                .outcome(LiftOutcome.fromValue(plan.outcome().name()))
                .headline(LiftWords.headline(plan, figures))
                .notChecked(notChecked())
                .cautions(LiftWords.CAUTIONS)
                .hold(figures.quantity(Kind.DURATION, request.limits().hold()))
                .stopRules(LiftWords.stopRules(request, figures))
                .assumptions(
                        Stream.concat(LiftWords.assumptions(request, plan).stream(), question.assumptions().stream())
                                .toList())
                .posts(plan.posts().stream().map(this::post).toList())
                .points(plan.points().stream().map(this::point).toList())
                .count(count())
                .stages(plan.stages().stream().map(stages::stage).toList())
                .brokenAsFound(plan.broken().stream().map(stages::use).toList())
                .remarks(plan.remarks().stream().map(LiftWriter::remark).toList())
                .solves(plan.basis().solved());
        model.setId(question.model().getId());
        model.setTitle(question.model().getTitle());
        if (plan.obstacle() instanceof LiftPlan.Stopped stopped) {
            model.setObstacle(obstacle(stopped));
        }
        if (!(plan.release() instanceof LiftPlan.Stay)) {
            model.setRelease(release(plan.release()));
        }
        if (!plan.stages().isEmpty()) {
            model.setRaised(raised());
        }
        return model;
    }

    private List<String> notChecked() {
        List<String> all = new ArrayList<>(plan.open());
        all.add(
                "what a plan check makes besides: a post out of line by the fit-up tolerance, shores that were there before any"
                        + " load, sideways forces, wind and earthquake, pads in bending, bearing stresses and the rest; check the"
                        + " raised situation of this answer too");
        return all;
    }

    private LiftPostResult post(LiftPlan.PostCourse post) {
        LiftPostResult model = new LiftPostResult()
                .post(post.name())
                .planned(figures.quantity(Kind.DEFLECTION, post.planned()))
                .turns(LiftWords.turns(post.turns()))
                .height(figures.quantity(Kind.POSITION, post.height()));
        if (!Double.isNaN(post.found())) {
            model.setLevelNow(figures.quantity(Kind.DEFLECTION, post.found()));
        }
        if (!Double.isNaN(post.target())) {
            model.target(figures.quantity(Kind.DEFLECTION, post.target()))
                    .wanted(figures.quantity(Kind.DEFLECTION, post.wanted()))
                    .left(figures.quantity(Kind.DEFLECTION, post.left()));
        }
        if (!Double.isNaN(post.travel())) {
            model.setTravelLeft(figures.quantity(Kind.DEFLECTION, post.travel()));
        }
        return model;
    }

    private LiftPointResult point(LiftPlan.PointCourse point) {
        LiftPointResult model = new LiftPointResult()
                .point(point.point().name())
                .found(figures.quantity(Kind.DEFLECTION, point.point().level()))
                .start(stages.span(Kind.DEFLECTION, point.start()))
                .end(stages.span(Kind.DEFLECTION, point.end()));
        if (!Double.isNaN(point.target())) {
            model.setTarget(figures.quantity(Kind.DEFLECTION, point.target()));
        }
        if (!Double.isNaN(point.reading().level())) {
            model.read(figures.quantity(Kind.DEFLECTION, point.reading().level()))
                    .expected(stages.span(Kind.DEFLECTION, point.reading().expected()))
                    .outBy(figures.quantity(Kind.DEFLECTION, point.reading().off()));
        }
        return model;
    }

    private LiftCount count() {
        LiftPlan.Count count = plan.count();
        LiftCount model = new LiftCount()
                .stages(count.stages())
                .least(count.least())
                .largest(figures.quantity(Kind.DEFLECTION, count.largest()));
        return count.why().isEmpty() ? model : model.why(LiftWords.sentence(count.why()));
    }

    private static LiftRemark remark(LiftPlan.Remark remark) {
        LiftRemark model = new LiftRemark()
                .kind(LiftRemarkKind.fromValue(remark.kind().name()))
                .message(LiftWords.sentence(remark.words()));
        return remark.place().isEmpty() ? model : model.at(remark.place());
    }

    private LiftObstacle obstacle(LiftPlan.Stopped stopped) {
        LiftObstacle model = new LiftObstacle()
                .stage(stopped.stage())
                .post(stopped.post())
                .raised(figures.quantity(Kind.DEFLECTION, stopped.raised()))
                .reason(LiftWords.reason(stopped, figures))
                .help(stopped.help().stream().map(this::help).toList());
        if (stopped.moves().isEmpty()) {
            model.setLimit(stages.use(stopped.limit(), stopped.value()));
        }
        return model;
    }

    private LiftHelp help(LiftPlan.Help help) {
        LiftHelp model = new LiftHelp().change(LiftWords.sentence(help.words()));
        return Double.isNaN(help.needed()) ? model : model.needed(stages.use(help.limit(), help.needed()));
    }

    private LiftRelease release(LiftPlan.Release release) {
        if (release instanceof LiftPlan.LetDown down) {
            return new LiftRelease()
                    .possible(true)
                    .onto(down.onto())
                    .stages(down.stages().stream().map(stages::stage).toList())
                    .levels(stages.points(down.levels()));
        }
        return new LiftRelease()
                .possible(false)
                .reason(LiftWords.sentence(((LiftPlan.CannotLetDown) release).reason()));
    }

    /** The end of the lift as a situation, to paste into the plan and check. */
    private LiftSituation raised() {
        List<PostLift> lifts = new ArrayList<>();
        for (LiftPlan.PostCourse post : plan.posts()) {
            double raised = stages.beyondTouching(post);
            if (raised > 0) {
                lifts.add(new PostLift().post(post.name()).lift(Kind.DEFLECTION.planText(raised, question.units())));
            }
        }
        LiftSituation model = new LiftSituation().name("raised").lifts(lifts);
        Situation during = request.during();
        List<Bearing> bearings = question.plan().floor().bearings();
        List<String> removed = new ArrayList<>();
        during.removed().forEach(b -> removed.add(bearings.get(b).name()));
        during.piers().forEach(p -> removed.add(pier(bearings.get(p.bearing()), p.pier())));
        List<BearingPart> parts = during.parts().stream()
                .map(p -> new BearingPart()
                        .bearing(bearings.get(p.bearing()).name())
                        .from(Kind.POSITION.planText(p.from(), question.units()))
                        .to(Kind.POSITION.planText(p.to(), question.units())))
                .toList();
        List<String> clear =
                during.clear().stream().map(b -> bearings.get(b).name()).toList();
        model.setRemoved(removed.isEmpty() ? null : removed);
        model.setRemovedParts(parts.isEmpty() ? null : parts);
        model.setClear(clear.isEmpty() ? null : clear);
        return model;
    }

    private static String pier(Bearing bearing, int pier) {
        return ((Girder) bearing.body()).piers().get(pier).name();
    }
}
