package dev.underprop.engine.lift;

import dev.underprop.engine.Halt;
import dev.underprop.engine.assess.StudiedFloor;
import dev.underprop.engine.plan.JobPlan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Works out one lift plan. */
final class Planning {

    private static final double ROUNDING = 1e-9;

    private final LiftRequest request;
    private final StudiedFloor study;
    private final LiftFloor floor;
    private final Wanted wanted;
    private final Sag sag;
    private final Screws screws;

    Planning(JobPlan plan, LiftRequest request, Halt halt) {
        this.request = request;
        this.wanted = new Wanted(plan, request);
        if (!wanted.misfits().isEmpty()) {
            throw new IllegalArgumentException("the request does not fit its plan: " + wanted.misfits());
        }
        this.study = StudiedFloor.of(plan, halt);
        this.sag = new Sag(study, request.survey());
        this.floor = new LiftFloor(study, request.during(), sag, request.crept());
        this.screws = new Screws(request.screws(), request.limits());
    }

    LiftPlan plan() {
        if (!floor.stands()) {
            return unstable("the floor does not stand on its bearings alone: " + floor.moves());
        }
        Shape snug = floor.at(new double[wanted.posts().size()]);
        if (!snug.stands()) {
            return unstable("the floor does not stand on its snug shores: " + snug.moves());
        }
        Levels levels = new Levels(floor, request.survey().points());
        Begun begun = new Begun(floor, levels, request, wanted);
        Gauges gauges = new Gauges(floor, request, request.during(), begun.sunk());
        Course start = Course.of(floor, gauges, begun.raised(), false);
        if (!start.shape().stands()) {
            return unstable("the floor does not stand where the lift begins: "
                    + start.shape().moves());
        }
        String lifts = floor.lifts(start);
        if (!lifts.isEmpty()) {
            return unstable("the floor does not stand safely where the lift begins: " + lifts);
        }
        Steps steps = new Steps(request, wanted, screws, begun);
        Run run = new Run(floor, gauges, request, levels, begun, new BitSet());
        run.go(steps.catchUp(), steps.possible());
        return written(run, steps, start, begun, levels);
    }

    private LiftPlan unstable(String reason) {
        return new LiftPlan(
                LiftPlan.Outcome.UNSTABLE,
                reason,
                List.of(),
                List.of(),
                List.of(),
                new LiftPlan.Count(0, 0, 0, ""),
                List.of(),
                sag.unknown(),
                List.of(),
                new LiftPlan.NoObstacle(),
                new LiftPlan.Stay(),
                basis());
    }

    private LiftPlan written(Run run, Steps steps, Course start, Begun begun, Levels levels) {
        LiftPlan.Obstacle obstacle = run.stopped()
                ? also(new Help(this, floor, run.gauges(), levels, begun).stopped(run, steps), steps)
                : steps.obstacle(request);
        List<LiftPlan.PostCourse> posts = posts(run.course(), begun);
        boolean whole = obstacle instanceof LiftPlan.NoObstacle;
        List<String> open = new ArrayList<>(run.gauges().open());
        open.addAll(new Unstated(request, sag).open());
        LiftPlan.Release release =
                whole ? new LettingDown(floor, request, levels).release(run.course(), begun) : new LiftPlan.Stay();
        if (release instanceof LiftPlan.CannotLetDown held) {
            open.add("The floor cannot be let down onto what is built up: " + held.reason() + ".");
        }
        boolean asFar = request.target().asFar();
        LiftPlan.Outcome outcome = whole
                ? (open.isEmpty() ? LiftPlan.Outcome.PLANNED : LiftPlan.Outcome.INCOMPLETE)
                : asFar ? LiftPlan.Outcome.SHORT : LiftPlan.Outcome.IMPOSSIBLE;
        List<LiftPlan.Stage> stages = whole || asFar ? run.made() : List.of();
        Remarks remarks = new Remarks(request, wanted, begun);
        return new LiftPlan(
                outcome,
                "",
                posts,
                points(levels, start, run.course(), begun),
                stages,
                count(run, steps, stages.size()),
                run.verdicts().broken(start),
                open,
                remarks.of(posts, stages, release),
                obstacle,
                release,
                basis());
    }

    /** Screws that are too short, or a total that is too small, stand in the way besides. */
    private LiftPlan.Stopped also(LiftPlan.Stopped stopped, Steps steps) {
        if (!(steps.obstacle(request) instanceof LiftPlan.Stopped besides)) {
            return stopped;
        }
        List<LiftPlan.Help> help = new ArrayList<>(stopped.help());
        help.addAll(besides.help());
        return new LiftPlan.Stopped(
                stopped.stage(),
                stopped.post(),
                stopped.raised(),
                stopped.limit(),
                stopped.value(),
                stopped.moves(),
                help);
    }

    private List<LiftPlan.PostCourse> posts(Course end, Begun begun) {
        List<LiftPlan.PostCourse> posts = new ArrayList<>();
        for (int p = 0; p < wanted.posts().size(); p++) {
            Wanted.OfPost post = wanted.posts().get(p);
            double raise = end.raised()[p] - begun.raised()[p];
            double turned = begun.turned()[p] + raise;
            double slack = Math.max(0, -begun.raised()[p]);
            posts.add(new LiftPlan.PostCourse(
                    post.name(),
                    post.now(),
                    post.target(),
                    post.raise() + (post.raise() > 0 ? slack : 0),
                    raise,
                    raise / screws.of(p).lead(),
                    post.post().height() + turned - post.post().gap(),
                    screws.of(p).travel() - turned));
        }
        return posts;
    }

    private List<LiftPlan.PointCourse> points(Levels levels, Course start, Course end, Begun begun) {
        List<Span> from = levels.at(start.shape());
        List<Span> to = levels.at(end.shape());
        List<LiftPlan.PointCourse> points = new ArrayList<>();
        for (int i = 0; i < from.size(); i++) {
            points.add(new LiftPlan.PointCourse(
                    request.survey().points().get(i),
                    wanted.targets().get(i),
                    from.get(i),
                    to.get(i),
                    begun.readings().isEmpty()
                            ? LiftPlan.Reading.NONE
                            : begun.readings().get(i)));
        }
        return points;
    }

    private LiftPlan.Count count(Run run, Steps steps, int stages) {
        double largest = 0;
        int least = 0;
        for (int p = 0; p < wanted.posts().size(); p++) {
            double raise = wanted.posts().get(p).raise();
            largest = Math.max(largest, raise);
            // Rounding may leave up to a smallest turn of it.
            double parts = (raise - screws.step(p)) / request.limits().stage();
            least = Math.max(least, (int) Math.ceil(parts - ROUNDING));
        }
        return new LiftPlan.Count(stages, least, largest, stages > least ? why(steps.possible(), run) : "");
    }

    private String why(int[] steps, Run run) {
        if (run.caughtUp()) {
            return "what has sunk is made up for first";
        }
        int count = run.stages(steps);
        for (int p = 0; p < steps.length; p++) {
            double inStage = screws.inStage(p) * screws.step(p);
            int most = Math.max(1, screws.inStage(p));
            if ((steps[p] + most - 1) / most == count
                    && inStage < request.limits().stage() * (1 - ROUNDING)) {
                return "whole smallest turns of " + wanted.posts().get(p).name()
                        + " do not add up to the limit per stage";
            }
        }
        return "a raise rounded up to whole smallest turns, or a gap to be taken up first, is more than the raise of the"
                + " floor";
    }

    LiftPlan.Basis basis() {
        return new LiftPlan.Basis(
                study.gravity().stream().map(StudiedFloor.Gravity::name).toList(),
                floor.bounds().stream().map(LiftFloor.Bound::words).toList(),
                study.said(),
                floor.solved());
    }

    LiftRequest request() {
        return request;
    }

    Wanted wanted() {
        return wanted;
    }
}
