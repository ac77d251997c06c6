package dev.underprop.engine.lift;

import dev.underprop.engine.plan.Post;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Writes down stages as they are made. */
final class Stages {

    private final LiftFloor floor;
    private final Verdicts verdicts;
    private final Screws screws;
    private final Levels levels;
    private final Calendar calendar;
    private final double[] turned;
    private final boolean down;
    private final List<LiftPlan.Stage> made = new ArrayList<>();

    /** @param turned how far each screw is raised when the first stage begins (m); goes on with them */
    Stages(
            LiftFloor floor,
            Verdicts verdicts,
            Screws screws,
            Levels levels,
            LiftLimits limits,
            double[] turned,
            boolean down) {
        this.floor = floor;
        this.verdicts = verdicts;
        this.screws = screws;
        this.levels = levels;
        this.calendar = new Calendar(limits);
        this.turned = turned;
        this.down = down;
    }

    /** @param held how the stage leaves the floor under every pattern of live load */
    void add(Stager.Made stage, Course held) {
        double[] raise = new double[turned.length];
        List<List<LiftPlan.Turn>> passes = new ArrayList<>();
        Map<Limit.Kind, LiftPlan.Running> worst = new EnumMap<>(Limit.Kind.class);
        for (List<Stager.Made.Turned> pass : stage.passes()) {
            List<LiftPlan.Turn> turns = new ArrayList<>();
            for (Stager.Made.Turned one : pass) {
                LiftPlan.Turn turn = turn(one);
                raise[one.post()] += Math.abs(turn.raise());
                turn.governing().forEach(r -> worst.merge(r.limit().kind(), r, Verdicts::worse));
                turns.add(turn);
            }
            passes.add(turns);
        }
        verdicts.governing(held).forEach(r -> worst.merge(r.limit().kind(), r, Verdicts::worse));
        List<Span> loads = floor.heads().stream()
                .map(h -> stage.end().shape().force(h.contact()))
                .toList();
        made.add(new LiftPlan.Stage(
                made.size() + 1,
                calendar.next(raise),
                passes,
                levels.at(stage.end().shape()),
                loads,
                new ArrayList<>(worst.values())));
    }

    private LiftPlan.Turn turn(Stager.Made.Turned one) {
        int p = one.post();
        LiftFloor.Head head = floor.heads().get(p);
        Post post = floor.study().post(head.place());
        int sign = down ? -1 : 1;
        double raise = sign * one.steps() * screws.step(p);
        turned[p] += raise;
        Span before = one.before().shape().force(head.contact());
        Span after = one.after().shape().force(head.contact());
        boolean free = !one.after().jacked().isEmpty();
        Span torque = free ? Span.UNKNOWN : screws.torque(p, down ? before : after, down);
        return new LiftPlan.Turn(
                p,
                post.name(),
                sign * one.steps() * screws.of(p).part(),
                raise,
                turned[p],
                post.height() + turned[p] - post.gap(),
                before,
                after,
                torque,
                screws.pull(p, torque),
                screws.of(p).travel() - turned[p],
                verdicts.governing(one.after()),
                free ? use(one.after().jacked().get(0)) : LiftPlan.JackUse.NONE);
    }

    private LiftPlan.JackUse use(Jacked held) {
        return new LiftPlan.JackUse(floor.study().name(held.jack().contact()), held.load(), held.lift());
    }

    List<LiftPlan.Stage> made() {
        return made;
    }
}
