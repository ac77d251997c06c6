package dev.underprop.wire.answer;

import dev.underprop.api.model.LiftExpected;
import dev.underprop.api.model.LiftJackUse;
import dev.underprop.api.model.LiftLimitKind;
import dev.underprop.api.model.LiftLimitUse;
import dev.underprop.api.model.LiftPass;
import dev.underprop.api.model.LiftSpan;
import dev.underprop.api.model.LiftStage;
import dev.underprop.api.model.LiftTurn;
import dev.underprop.engine.lift.LiftPlan;
import dev.underprop.engine.lift.LiftRequest;
import dev.underprop.engine.lift.Limit;
import dev.underprop.engine.lift.Span;
import dev.underprop.engine.plan.JobPlan;
import dev.underprop.engine.plan.Post;
import dev.underprop.wire.quantity.Kind;
import java.util.ArrayList;
import java.util.List;

/** Writes stages, passes and turns. */
final class LiftStages {

    private final List<Post> posts;
    private final LiftRequest request;
    private final Figures figures;

    LiftStages(JobPlan plan, LiftRequest request, Figures figures) {
        this.posts = plan.shores().stream().flatMap(s -> s.posts().stream()).toList();
        this.request = request;
        this.figures = figures;
    }

    LiftStage stage(LiftPlan.Stage stage) {
        List<LiftPass> passes = new ArrayList<>();
        for (List<LiftPlan.Turn> pass : stage.passes()) {
            passes.add(new LiftPass()
                    .number(passes.size() + 1)
                    .turns(pass.stream().map(this::turn).toList()));
        }
        return new LiftStage()
                .number(stage.number())
                .start(figures.quantity(Kind.DURATION, stage.start() * 3600))
                .passes(passes)
                .levels(points(stage.levels()))
                .loads(loads(stage.loads()))
                .governing(stage.governing().stream().map(this::use).toList());
    }

    /** What to expect at every surveyed point. */
    List<LiftExpected> points(List<Span> levels) {
        List<LiftExpected> all = new ArrayList<>();
        for (int i = 0; i < levels.size(); i++) {
            all.add(new LiftExpected()
                    .at(request.survey().points().get(i).name())
                    .expected(span(Kind.DEFLECTION, levels.get(i)))
                    .tolerance(
                            figures.quantity(Kind.DEFLECTION, request.survey().tolerance())));
        }
        return all;
    }

    private List<LiftExpected> loads(List<Span> loads) {
        List<LiftExpected> all = new ArrayList<>();
        for (int p = 0; p < loads.size(); p++) {
            all.add(new LiftExpected().at(posts.get(p).name()).expected(span(Kind.FORCE, loads.get(p))));
        }
        return all;
    }

    private LiftTurn turn(LiftPlan.Turn turn) {
        LiftTurn model = new LiftTurn()
                .post(turn.name())
                .words(LiftWords.turns(turn.turns()))
                .turns(turn.turns())
                .raise(figures.quantity(Kind.DEFLECTION, turn.raise()))
                .raised(figures.quantity(Kind.DEFLECTION, turn.raised()))
                .height(figures.quantity(Kind.POSITION, turn.height()))
                .loadBefore(span(Kind.FORCE, turn.before()))
                .loadAfter(span(Kind.FORCE, turn.after()))
                .governing(turn.governing().stream().map(this::use).toList());
        LiftPlan.JackUse jack = turn.jack();
        if (!jack.name().isEmpty()) {
            model.setJack(new LiftJackUse()
                    .jack(jack.name())
                    .load(span(Kind.FORCE, jack.load()))
                    .lift(span(Kind.DEFLECTION, jack.lift())));
        }
        if (turn.torque().known()) {
            model.setTorque(span(Kind.MOMENT, turn.torque()));
        }
        if (turn.pull().known()) {
            model.setPull(span(Kind.FORCE, turn.pull()));
        }
        if (!Double.isNaN(turn.travel())) {
            model.setTravelLeft(figures.quantity(Kind.DEFLECTION, turn.travel()));
        }
        return model;
    }

    LiftSpan span(Kind kind, Span span) {
        var least = figures.quantity(kind, span.least());
        return new LiftSpan()
                .least(least.getValue())
                .greatest(figures.quantity(kind, span.greatest()).getValue())
                .unit(least.getUnit());
    }

    LiftLimitUse use(LiftPlan.Running running) {
        return use(running.limit(), running.value());
    }

    LiftLimitUse use(Limit limit, double value) {
        double used = value == 0 ? 0 : value / limit.allowed();
        LiftLimitUse model = new LiftLimitUse()
                .limit(LiftLimitKind.fromValue(limit.kind().name()))
                .at(limit.place());
        if (Double.isFinite(used)) {
            model.setUsed(used);
        }
        switch (limit.kind()) {
            case CONTACT, SLACK, TRAVEL, TOTAL ->
                model.value(figures.quantity(Kind.DEFLECTION, value))
                        .allowed(figures.quantity(Kind.DEFLECTION, limit.allowed()));
            case TIE ->
                model.value(figures.quantity(Kind.FORCE, value)).allowed(figures.quantity(Kind.FORCE, limit.allowed()));
            case POST, PAD, BEAM, JOIST, SLOPE -> {
                // Ratios have no unit.
            }
        }
        return model;
    }

    /** How far a post stands raised beyond touching when the lift ends (m). */
    double beyondTouching(LiftPlan.PostCourse course) {
        return posts.stream()
                .filter(p -> p.name().equals(course.name()))
                .mapToDouble(p -> course.height() - p.height())
                .findFirst()
                .orElse(0);
    }
}
